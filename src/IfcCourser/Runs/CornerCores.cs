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
    /// <summary>Walls with the cores that others list, their pieces bored and opened at the foot for these too.</summary>
    public static ImmutableArray<WallLayout> Fill(ImmutableArray<WallLayout> walls)
    {
        var shared = walls.SelectMany(owner => owner.Cores.SelectMany(core => core.SharedWith.Select(id => (Wall: id, Owner: owner, Core: core))))
            .ToLookup(core => core.Wall, core => (core.Owner, core.Core), StringComparer.Ordinal);
        return [.. walls.Select(wall => wall.Frame.Curve is null && shared.Contains(wall.Identity.GlobalId) ? Filled(wall, shared[wall.Identity.GlobalId]) : wall)];
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
        select new Finding(
            FindingCodes.CoreOnJoint,
            Messages.CornerCoreOnJoint(courses[i].Number, distance, rules.CoreClearance, rules.Catalog.Units),
            new FindingPlace { S = bar.At, Z = courses[i].Bottom, Course = courses[i].Number });

    private static WallLayout Filled(WallLayout wall, IEnumerable<(WallLayout Owner, Core Core)> shared)
    {
        ImmutableArray<CornerCore> cores =
        [
            .. shared.Select(core => Of(wall, core.Owner, core.Core)).OrderBy(core => core.At).ThenBy(core => core.Bottom)
                .Select((core, i) => core with { Id = FormattableString.Invariant($"N{i + 1}") }),
        ];
        return wall with
        {
            CornerCores = cores,
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
