using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Walls;
using IfcCourser.Walls.Reading;

namespace IfcCourser.SettingOut;

/// <summary>The edges of the slabs that a storey's bars are cast in.</summary>
internal static class SlabEdges
{
    /// <summary>Bars this near to a slab's edge, mm, still stand in it.</summary>
    private const double Dust = 1;

    /// <summary>
    /// Outlines of the slabs under the bars, each bar in the highest one under its foot; where a bar stands in no slab of the
    /// model, the outer faces of all walls, and why.
    /// </summary>
    /// <param name="feet">Of the bars, model axes, mm.</param>
    /// <param name="walls">Of the storey.</param>
    public static (ImmutableArray<SetOutOutline> Outlines, Finding? Finding) Of(
        string? storey, IReadOnlyCollection<Vector3> feet, IReadOnlyCollection<WallLayout> walls, ImmutableArray<SlabFootprint> slabs)
    {
        var under = feet.Select(foot => slabs.Where(slab => Holds(slab, foot)).MaxBy(slab => slab.Top)).ToList();
        if (feet.Count > 0 && under.TrueForAll(slab => slab is not null))
        {
            return (OfSlabs([.. under.OfType<SlabFootprint>().Distinct()]), null);
        }

        var named = under.OfType<SlabFootprint>().Select(slab => slab.Name ?? slab.GlobalId).FirstOrDefault();
        return (OfWalls(walls, feet), new Finding(FindingCodes.SlabOutlineAssumed, Messages.SlabOutlineAssumed(storey, named, under.Count(slab => slab is null))));
    }

    /// <summary>Outer faces of walls, gaps between rooms filled; walls that stand apart and hold no bar are left out.</summary>
    public static ImmutableArray<SetOutOutline> OfWalls(IReadOnlyCollection<WallLayout> walls, IReadOnlyCollection<Vector3> feet) =>
    [
        .. Region.Of(walls.Select(wall => wall.Wall.Footprint())).Filled().Parts
            .Where(part => feet.Count == 0 || feet.Any(foot => part.IsNear(Around(foot), 0)))
            .Select(part => new SetOutOutline(ControlLineKind.WallFace, null, walls.Min(wall => wall.Frame.Origin.Z), part.Outline)),
    ];

    private static bool Holds(SlabFootprint slab, Vector3 foot) =>
        slab.Top >= foot.Z - SiteReader.DeepestTop && slab.Top <= foot.Z + SiteReader.HighestTop
        && slab.Plan.IsNear(Around(foot), 0);

    private static Region Around(Vector3 foot) => Region.Of(new Rect(foot.X - Dust, foot.Y - Dust, foot.X + Dust, foot.Y + Dust));

    private static ImmutableArray<SetOutOutline> OfSlabs(IReadOnlyCollection<SlabFootprint> slabs) =>
    [
        .. slabs.GroupBy(slab => Math.Round(slab.Top)).OrderBy(level => level.Key).SelectMany(level => level
            .Aggregate(Region.Empty, (all, slab) => all.Union(slab.Plan)).Filled().Parts
            .Select(part => new SetOutOutline(ControlLineKind.SlabEdge, Names(level), level.Max(slab => slab.Top), part.Outline))),
    ];

    private static string? Names(IEnumerable<SlabFootprint> slabs) =>
        string.Join(", ", slabs.Select(slab => slab.Name).Where(name => !string.IsNullOrWhiteSpace(name)).Distinct(StringComparer.Ordinal)) is { Length: > 0 } names ? names : null;
}
