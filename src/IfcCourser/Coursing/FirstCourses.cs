using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>How many first courses must be cut in height where walls share course lines; exact by trying every height at which that changes.</summary>
internal sealed class FirstCourses(LayoutRules rules)
{
    private readonly CourseFit _fit = new(rules);

    /// <summary>The bases of walls, whole courses left out, with what may lie on them and how many walls stand so.</summary>
    public ImmutableArray<(Length Base, LengthRange Bed, int Walls)> Feet(IEnumerable<WallHeights> walls) =>
        Together(walls.Select(wall => (wall.Base.Modulo(rules.Catalog.CoursePitch), wall.Bed, 1)));

    public static ImmutableArray<(Length Base, LengthRange Bed, int Walls)> Together(IEnumerable<(Length Base, LengthRange Bed, int Walls)> feet) =>
        [.. feet.GroupBy(foot => (foot.Base, foot.Bed)).Select(same => (same.Key.Base, same.Key.Bed, same.Sum(foot => foot.Walls)))];

    /// <returns>The fewest cut first courses, on whatever lines; null where no lines suit all bases.</returns>
    public int? FewestCut(ImmutableArray<(Length Base, LengthRange Bed, int Walls)> feet) => feet
        .SelectMany(foot => StartsOver(foot.Base, foot.Bed))
        .Distinct()
        .Select(start => CutOn(new CourseLines(start, rules.Catalog), feet))
        .Min();

    private int? CutOn(CourseLines lines, ImmutableArray<(Length Base, LengthRange Bed, int Walls)> feet)
    {
        var cut = 0;
        foreach (var (wallBase, bed, walls) in feet)
        {
            var courses = _fit.Feet(wallBase, bed, lines).ToList();
            if (courses.Count == 0)
            {
                return null;
            }

            cut += courses.TrueForAll(course => course.IsCut) ? walls : 0;
        }

        return cut;
    }

    /// <summary>Lines at which a base begins or ceases to allow a first course.</summary>
    private IEnumerable<Length> StartsOver(Length wallBase, LengthRange bed)
    {
        var joint = rules.Catalog.BedJoint.Nominal;
        return rules.Catalog.OtherHeights
            .Prepend(rules.Catalog.UnitHeight)
            .SelectMany(height => new[] { bed.Min, bed.Nominal, bed.Max }.Select(thickness => wallBase + thickness + height + joint))
            .Concat(CourseFit.LeastRip(rules.Catalog) is { } rip ? [wallBase + bed.Nominal + rip + joint] : [])
            .Select(start => start.Modulo(rules.Catalog.CoursePitch));
    }
}
