using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Support;

/// <summary>What holds where one wall stands against another, both from one base; the tee is the model's only junction.</summary>
internal static class TeeLaws
{
    /// <param name="layout">Main wall first.</param>
    /// <param name="place">Where on the main wall.</param>
    public static IEnumerable<string> Breaches(Layout layout, JunctionPlace place)
    {
        var (host, abutting) = (layout.Walls[0], layout.Walls[1]);
        var isBonded = layout.Junctions[0].How == JunctionHow.Bonded;
        var passing = abutting.Courses.Where(course => Reach(course) > abutting.Frame.Length).ToList();
        if (!isBonded && passing.Count > 0)
        {
            yield return "a wall that is only tied runs into the main wall";
        }

        foreach (var course in passing)
        {
            if (Reach(course) != abutting.Frame.Length + host.Frame.Thickness)
            {
                yield return $"course {course.Number} of the abutting wall does not end at the main wall's far face";
            }

            if (In(host, course, place).Any())
            {
                yield return $"course {course.Number} of the abutting wall stands in pieces of the main wall";
            }
        }

        foreach (var course in abutting.Courses.Except(passing).Where(course => course.Top <= host.Courses[^1].Top && Reach(course) > abutting.Frame.Length - layout.Rules.Catalog.HeadJoint.Nominal))
        {
            yield return $"course {course.Number} of the abutting wall leaves no joint before the main wall";
        }

        foreach (var pair in passing.Zip(passing.Skip(1)).Where(pair => pair.Second.Number - pair.First.Number < 2))
        {
            yield return $"courses {pair.First.Number} and {pair.Second.Number} both run through";
        }
    }

    private static Length Reach(Course course) => course.Pieces.Max(piece => piece.To);

    private static IEnumerable<Piece> In(WallLayout host, Course course, JunctionPlace place) => host.Courses
        .Where(other => other.Bottom < course.Top && other.Top > course.Bottom)
        .SelectMany(other => other.Pieces)
        .Where(piece => piece.From < place.To && piece.To > place.From && piece.Bottom < course.Top && piece.Top > course.Bottom);
}
