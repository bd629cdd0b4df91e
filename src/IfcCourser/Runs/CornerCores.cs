using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>A corner's bar is listed by one wall and stands in the blocks of both: what the other one is told of it.</summary>
internal static class CornerCores
{
    /// <summary>Walls with the cores that others list, their pieces bored and opened at the foot for these too, and courses named whose joints stand near them.</summary>
    public static ImmutableArray<WallLayout> Fill(ImmutableArray<WallLayout> walls, LayoutRules rules)
    {
        var shared = walls.SelectMany(owner => owner.Cores.SelectMany(core => core.SharedWith.Select(id => (Wall: id, Owner: owner, Core: core))))
            .ToLookup(core => core.Wall, core => (core.Owner, core.Core), StringComparer.Ordinal);
        ImmutableArray<WallLayout> filled =
            [.. walls.Select(wall => wall.Frame.Curve is null && shared.Contains(wall.Identity.GlobalId) ? Filled(wall, shared[wall.Identity.GlobalId], rules) : wall)];
        return [.. filled.Select(owner => owner.Cores.All(core => core.SharedWith.IsEmpty) ? owner : owner with { Findings = [.. owner.Findings, .. CoresInOpen.Of(owner, filled, rules)] })];
    }

    /// <summary>Courses whose joints stand too near a corner's bar that the other wall lists.</summary>
    /// <param name="bars">The bars of corners that others list.</param>
    /// <param name="laid">The wall's courses.</param>
    /// <param name="courses">The same, numbered.</param>
    /// <param name="rules">Clearance.</param>
    public static IEnumerable<Finding> OnJoints(IEnumerable<BarPlace> bars, ImmutableArray<LaidCourse> laid, ImmutableArray<Course> courses, LayoutRules rules) =>
        from bar in bars
        from i in Enumerable.Range(0, laid.Length)
        where bar.Heights.Overlaps(new Interval(courses[i].Bottom, courses[i].Top))
        let distance = LapCheck.Nearest(laid[i].Joints, bar.At)
        where distance < rules.CoreClearance
        select OnJoint(courses[i], bar.At, distance, rules);

    private static Finding OnJoint(Course course, Length at, Length distance, LayoutRules rules) => new(
        FindingCodes.CoreOnJoint,
        Messages.CornerCoreOnJoint(course.Number, distance, rules.CoreClearance, rules.Catalog.Units),
        new FindingPlace { S = at, Z = course.Bottom, Course = course.Number });

    /// <summary>The same where the bar goes on beyond the masonry that this wall has over the corner's middle, since the other wall has more.</summary>
    private static IEnumerable<Finding> OnOtherJoints(WallLayout wall, ImmutableArray<CornerCore> cores, LayoutRules rules) =>
        from core in cores
        from course in wall.Courses
        where course.Top > core.Bottom && course.Bottom < core.Top
            && !wall.Findings.Any(finding => finding.Code == FindingCodes.CoreOnJoint && finding.At is { Core: null } at && at.Course == course.Number)
        let distance = LapCheck.Nearest(Joints(course, rules), core.At)
        where distance < rules.CoreClearance
        select OnJoint(course, core.At, distance, rules);

    private static IEnumerable<Length> Joints(Course course, LayoutRules rules)
    {
        var half = rules.Catalog.HeadJoint.Nominal / 2;
        return course.Pieces.Zip(course.Pieces.Skip(1))
            .Where(pair => pair.Second.From >= pair.First.To && pair.Second.From - pair.First.To <= rules.Catalog.HeadJoint.Max)
            .Select(pair => (pair.First.To + pair.Second.From) / 2)
            .Concat(course.Spans.Where(span => span.StartEdge is EdgeKind.Wall or EdgeKind.Lintel).Select(span => span.Run.From - half))
            .Concat(course.Spans.Where(span => span.EndEdge is EdgeKind.Wall or EdgeKind.Lintel).Select(span => span.Run.To + half));
    }

    private static WallLayout Filled(WallLayout wall, IEnumerable<(WallLayout Owner, Core Core)> shared, LayoutRules rules)
    {
        ImmutableArray<CornerCore> cores =
        [
            .. shared.Select(core => Of(wall, core.Owner, core.Core)).OrderBy(core => core.At).ThenBy(core => core.Bottom)
                .Select((core, i) => core with { Id = FormattableString.Invariant($"N{i + 1}") }),
        ];
        return wall with
        {
            CornerCores = cores,
            Findings = [.. wall.Findings, .. OnOtherJoints(wall, cores, rules)],
            Courses = [.. wall.Courses.Select(course => course with { Pieces = [.. course.Pieces.Select(piece => Bored(piece, cores, isFirst: course.Number == 1))] })],
        };
    }

    private static CornerCore Of(WallLayout wall, WallLayout owner, Core core)
    {
        var from = core.Point - wall.Frame.Origin.Plan;
        var up = Length.FromModelMm(owner.Frame.Origin.Z - wall.Frame.Origin.Z);
        return new CornerCore(
            string.Empty, owner.Identity.GlobalId, core.Id,
            Length.FromModelMm(Vector2.Dot(from, wall.Frame.Direction)), Length.FromModelMm(-Vector2.Dot(from, wall.Frame.Normal)),
            core.Bottom + up, core.Top + up, core.Diameter);
    }

    private static Piece Bored(Piece piece, ImmutableArray<CornerCore> cores, bool isFirst)
    {
        var passing = cores.Where(core => core.At > piece.From && core.At < piece.To && core.Top > piece.Bottom && core.Bottom < piece.Top).ToList();
        return passing.Count == 0 ? piece with { CornerCores = [] } : piece with
        {
            CornerCores = [.. passing.Select(core => core.Id)],
            Notch = piece.Notch ?? (isFirst ? PieceMaker.NotchFor(passing[0].At, passing[0].Diameter, piece.From, piece.To) : null),
        };
    }
}
