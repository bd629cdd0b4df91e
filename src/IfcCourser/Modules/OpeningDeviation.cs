using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>How far the edges of a wanted masonry opening are from the lines they belong on.</summary>
/// <param name="Left">The left jamb's way to its nearest module line; negative to the left.</param>
/// <param name="Right">The right jamb's.</param>
/// <param name="Sill">The sill's way to the nearest top of a course; null where it lies on or under the wall's base.</param>
/// <param name="Head">The head's way up to the next course's underside; null where no course stands over it.</param>
public sealed record OpeningDeviation(Length Left, Length Right, Length? Sill, Length? Head)
{
    public static OpeningDeviation Of(WallLayout wall, OpeningLayout opening, LayoutRules rules)
    {
        var grid = new ModuleGrid(wall.ModuleLines, rules.Catalog.HeadJoint.Nominal);
        var design = opening.Design;
        return new OpeningDeviation(
            grid.LeftJambToLine(design.Left),
            grid.RightJambToLine(design.Right),
            design.Bottom <= Length.Zero ? null : Nearest(wall.Courses.Select(course => course.Top - design.Bottom)),
            Nearest(wall.Courses.Select(course => course.Bottom - design.Top).Where(way => way >= Length.Zero)));
    }

    private static Length? Nearest(IEnumerable<Length> ways) =>
        ways.OrderBy(Length.Abs).Select(way => (Length?)way).FirstOrDefault();
}
