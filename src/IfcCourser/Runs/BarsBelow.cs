using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>The bars under a wall that could run on into it, through the slab between; common practice, no source.</summary>
internal static class BarsBelow
{
    private const double ThickestSlabMm = 600;

    /// <summary>Off the wall's middle, and still within its cores.</summary>
    private const double MostOffMiddleMm = 10;

    /// <summary>Each core that ends at the wall's base, with its place along the wall's run.</summary>
    /// <param name="wall">A straight wall; curved ones have none.</param>
    /// <param name="laid">Walls laid out before.</param>
    public static IEnumerable<(WallLayout Wall, Core Core, Length At)> Of(Wall wall, IEnumerable<WallLayout> laid)
    {
        var frame = wall.Frame;
        if (frame.Curve is not null)
        {
            yield break;
        }

        foreach (var other in laid)
        {
            foreach (var core in other.Cores)
            {
                var under = frame.Origin.Z - (other.Frame.Origin.Z + core.Top.Mm);
                var from = core.Point - frame.Origin.Plan;
                var (s, t) = (Vector2.Dot(from, frame.Direction), -Vector2.Dot(from, frame.Normal));
                if (under is >= -1 and <= ThickestSlabMm && Math.Abs(t - (frame.Thickness.Mm / 2)) <= MostOffMiddleMm && s > 0 && s < frame.Length.Mm)
                {
                    yield return (other, core, Length.FromModelMm(s));
                }
            }
        }
    }

    /// <summary>Walls by their bases, the lowest first; those of one batch don't stand on each other.</summary>
    /// <param name="walls">In the model's order.</param>
    /// <returns>Indices.</returns>
    public static IEnumerable<ImmutableArray<int>> Storeys(ImmutableArray<Wall> walls)
    {
        const double LowestWallMm = 1000;
        var rest = Enumerable.Range(0, walls.Length).OrderBy(i => walls[i].Frame.Origin.Z).ThenBy(i => i).ToList();
        while (rest.Count > 0)
        {
            var limit = walls[rest[0]].Frame.Origin.Z + LowestWallMm;
            var count = rest.FindIndex(i => walls[i].Frame.Origin.Z >= limit);
            count = count < 0 ? rest.Count : count;
            yield return [.. rest.Take(count)];
            rest.RemoveRange(0, count);
        }
    }
}
