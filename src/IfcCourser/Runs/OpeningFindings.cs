using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>What is to be told of a wall's openings: moved ones, ones off the module or the course lines, short piers.</summary>
internal static class OpeningFindings
{
    public static IEnumerable<Finding> Of(
        Wall wall, ImmutableArray<OpeningLayout> openings, ModuleLines lines, ImmutableArray<CourseBand> bands, LayoutRules rules) =>
        openings.Where(opening => opening.Interrupts && !opening.Opening.IsFixed)
            .SelectMany(opening => Moved(opening, rules).Concat(OffModule(opening, lines, rules)).Concat(OffCourse(opening, bands, rules)))
            .Concat(ShortPiers(wall, openings, rules));

    private static IEnumerable<Finding> Moved(OpeningLayout opening, LayoutRules rules)
    {
        var (design, placed) = (opening.Design, opening.Placed);
        if (design == placed)
        {
            yield break;
        }

        var units = rules.Catalog.Units;
        var (sill, head) = (placed.Bottom - design.Bottom, placed.Top - design.Top);
        yield return new Finding(
            FindingCodes.OpeningMoved,
            placed.Width == design.Width
                ? Messages.OpeningMoved(Name(opening), placed.Left - design.Left, sill, head, units)
                : Messages.OpeningResized(Name(opening), placed.Left - design.Left, placed.Right - design.Right, sill, head, units),
            At(opening));
    }

    private static IEnumerable<Finding> OffModule(OpeningLayout opening, ModuleLines lines, LayoutRules rules)
    {
        if (opening.OnModule)
        {
            yield break;
        }

        var joint = rules.Catalog.HeadJoint.Nominal;
        var grid = new ModuleGrid(lines, joint);
        var widen = (opening.Placed.Width - joint).CeilingTo(rules.Module) + joint - opening.Placed.Width;
        var move = grid.LeftJambToLine(opening.Placed.Left);
        yield return new Finding(
            FindingCodes.OpeningOffModule,
            widen <= rules.ModuleTolerance
                ? Messages.OffModule(Name(opening), move, rules.Catalog.Units)
                : Messages.OffModule(Name(opening), move, widen, rules.Catalog.Units),
            At(opening));
    }

    private static IEnumerable<Finding> OffCourse(OpeningLayout opening, ImmutableArray<CourseBand> bands, LayoutRules rules)
    {
        var placed = opening.Placed;
        var head = OpeningHeights.Head(placed.Top, [.. bands.Select(band => new Interval(band.Bottom, band.Top))]);
        if (head > placed.Top)
        {
            yield return new Finding(FindingCodes.HeadOffCourse, Messages.HeadOffCourse(Name(opening), head - placed.Top, rules.Catalog.Units), At(opening));
        }
        else if (placed.Top > bands[^1].Bottom && placed.Top < bands[^1].Top)
        {
            yield return new Finding(FindingCodes.HeadOffCourse, Messages.HeadAboveCourses(Name(opening), placed.Top - bands[^1].Bottom, rules.Catalog.Units), At(opening));
        }

        if (placed.Bottom > bands[0].Bottom && !bands.Any(band => band.Top == placed.Bottom))
        {
            var off = bands.Select(band => placed.Bottom - band.Top).ToList();
            yield return new Finding(
                FindingCodes.SillOffCourse,
                Messages.SillOffCourse(
                    Name(opening),
                    off.Where(above => above > Length.Zero).Select(above => (Length?)above).Min(),
                    off.Where(above => above < Length.Zero).Select(above => (Length?)-above).Min(),
                    rules.Catalog.Units),
                At(opening));
        }
    }

    private static IEnumerable<Finding> ShortPiers(Wall wall, ImmutableArray<OpeningLayout> openings, LayoutRules rules)
    {
        var placed = openings.Where(opening => opening.Interrupts).OrderBy(opening => opening.Placed.Left).ToList();
        for (var i = 0; i < placed.Count; i++)
        {
            var rect = placed[i].Placed;
            var before = placed.Take(i).Where(other => other.Placed.StandsBeside(rect)).Select(other => other.Placed.Right).DefaultIfEmpty(Length.Zero).Max();
            var isLast = !placed.Skip(i + 1).Any(other => other.Placed.StandsBeside(rect));
            foreach (var pier in isLast ? [rect.Left - before, wall.Frame.Length - rect.Right] : new[] { rect.Left - before })
            {
                if (pier > Length.Zero && pier < rules.Catalog.LeastPier)
                {
                    yield return new Finding(
                        FindingCodes.PierShort, Messages.PierShort(pier, rules.Catalog.LeastPier, rules.Catalog.Units), At(placed[i]));
                }
            }
        }
    }

    private static string Name(OpeningLayout opening) => opening.Opening.Label;

    private static FindingPlace At(OpeningLayout opening) => new()
    {
        S = opening.Placed.Left,
        Z = opening.Placed.Bottom,
        Opening = opening.Opening.GlobalId,
    };
}
