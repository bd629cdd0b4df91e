using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>Walls that stand on other walls, or on a slab that lies on them.</summary>
internal static class StoreyStacks
{
    /// <summary>Slabs thicker than this part a building's walls. Common practice, no source.</summary>
    private static readonly Length _thickestSlab = Length.FromMm(500);

    /// <summary>Below this sine the runs count as parallel.</summary>
    private const double Parallel = 0.004;

    /// <summary>Pairs by their upper wall, the wall next under it first.</summary>
    public static IEnumerable<(int Lower, int Upper, bool IsDirect)> Of(ImmutableArray<Wall> walls, LayoutRules rules)
    {
        var tops = walls.Select(wall => Base(wall) + wall.Outline.Max(point => point.Z)).ToList();
        for (var upper = 0; upper < walls.Length; upper++)
        {
            var under = Enumerable.Range(0, walls.Length)
                .Where(lower => lower != upper)
                .Select(lower => (Lower: lower, Gap: Base(walls[upper]) - tops[lower]))
                .Where(pair => pair.Gap >= -rules.Catalog.BedJoint.Nominal && pair.Gap <= _thickestSlab && StandsOver(walls[pair.Lower], walls[upper]))
                .OrderBy(pair => pair.Gap)
                .ThenBy(pair => pair.Lower);
            foreach (var (lower, gap) in under)
            {
                yield return (lower, upper, gap <= rules.Catalog.BedJoint.Nominal);
            }
        }
    }

    private static Length Base(Wall wall) => Length.FromModelMm(wall.Frame.Origin.Z);

    /// <summary>Parallel walls whose plans share at least half the thinner one's thickness.</summary>
    private static bool StandsOver(Wall lower, Wall upper)
    {
        if (Math.Abs(Vector2.Cross(lower.Frame.Direction, upper.Frame.Direction)) > Parallel)
        {
            return false;
        }

        var corners = new[]
        {
            upper.Frame.PointAt(Length.Zero, Length.Zero, Length.Zero),
            upper.Frame.PointAt(upper.Frame.Length, upper.Frame.Thickness, Length.Zero),
        }.Select(corner => corner.Plan - lower.Frame.Origin.Plan).ToList();
        var along = corners.Select(corner => Vector2.Dot(corner, lower.Frame.Direction)).ToList();
        var across = corners.Select(corner => -Vector2.Dot(corner, lower.Frame.Normal)).ToList();
        var sharedAcross = Math.Min(across.Max(), lower.Frame.Thickness.Mm) - Math.Max(across.Min(), 0);
        return Math.Min(along.Max(), lower.Frame.Length.Mm) > Math.Max(along.Min(), 0)
            && sharedAcross >= Math.Min(lower.Frame.Thickness.Mm, upper.Frame.Thickness.Mm) / 2;
    }
}
