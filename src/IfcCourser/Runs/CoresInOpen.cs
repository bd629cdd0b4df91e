using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>Bars of corners that stand in the open over courses: neither of the walls that share them has a block around them there.</summary>
internal static class CoresInOpen
{
    /// <param name="owner">The wall that lists the bars.</param>
    /// <param name="walls">All walls, with the bars that others list.</param>
    /// <param name="rules">What is left to mortar.</param>
    /// <returns>One finding a bar; none where a wall that shares it is not laid out, for its blocks are not known.</returns>
    public static IEnumerable<Finding> Of(WallLayout owner, ImmutableArray<WallLayout> walls, LayoutRules rules) =>
        from core in owner.Cores
        where !owner.Findings.Any(finding => finding.Code == FindingCodes.CoreInOpen && finding.At?.Core == core.Id)
        let others = Sharing(owner, core, walls).ToList()
        where others.Count > 0 && others.Count == core.SharedWith.Length
        let around = Around(owner, core.At, Length.Zero, rules).Concat(others.SelectMany(other => Around(other.Wall, other.Core.At, core.Bottom - other.Core.Bottom, rules))).ToList()
        let open = owner.Courses.Where(course => IsOpen(course, core, around, rules)).ToList()
        where open.Count > 0
        select new Finding(
            FindingCodes.CoreInOpen,
            Messages.CoreInOpen(core.Id, open.Select(course => course.Number), others.Select(other => other.Wall.Identity.Label)),
            new FindingPlace { S = core.At, Z = open[0].Bottom, Course = open[0].Number, Core = core.Id });

    private static IEnumerable<(WallLayout Wall, CornerCore Core)> Sharing(WallLayout owner, Core core, ImmutableArray<WallLayout> walls) =>
        from wall in walls
        where core.SharedWith.Contains(wall.Identity.GlobalId, StringComparer.Ordinal)
        from shared in wall.CornerCores
        where shared.Wall == owner.Identity.GlobalId && shared.Core == core.Id
        select (wall, shared);

    /// <summary>Heights over which a wall's blocks and beams stand around a place; in a head joint, which is a finding of its own, both neighbours count.</summary>
    private static IEnumerable<Interval> Around(WallLayout wall, Length at, Length up, LayoutRules rules)
    {
        var pieces = wall.Courses.SelectMany(course => course.Pieces).ToList();
        var right = pieces.Where(piece => piece.From >= at).ToList();
        return pieces
            .Where(piece => piece.From < at && (piece.To > at || right.Exists(next => next.From - piece.To <= rules.Catalog.HeadJoint.Max && next.Bottom < piece.Top && next.Top > piece.Bottom)))
            .Select(piece => new Interval(piece.Bottom + up, piece.Top + up))
            .Concat(wall.BondBeams.Where(beam => beam.From < at && beam.To > at).Select(beam => new Interval(beam.Bottom + up, beam.Top + up)));
    }

    private static bool IsOpen(Course course, Core core, List<Interval> around, LayoutRules rules)
    {
        var (bottom, top) = (Length.Max(course.Bottom, core.Bottom), Length.Min(course.Top, core.Top));
        var open = Length.Zero;
        foreach (var height in around.Where(height => height.To > bottom && height.From < top).OrderBy(height => height.From))
        {
            open = Length.Max(open, height.From - bottom);
            bottom = Length.Max(bottom, height.To);
        }

        return Length.Max(open, top - bottom) >= rules.Set.MortarRest + (rules.Catalog.BedJoint.Nominal * 2);
    }
}
