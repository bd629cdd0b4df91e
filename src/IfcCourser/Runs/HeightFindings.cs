using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>What is to be told of a wall's heights: its bed, courses cut in height, what is left open at the top, and which heights would do.</summary>
internal static class HeightFindings
{
    public static IEnumerable<Finding> Of(WallLines lines, LayoutRules rules) =>
        Bed(lines, rules.Catalog).Concat(CutCourses(lines, rules)).Concat(Top(lines, rules));

    /// <summary>Why a wall has no course at all.</summary>
    public static string TooLow(WallLines lines, LayoutRules rules)
    {
        var least = CourseFit.LeastRip(rules.Catalog) ?? rules.Catalog.OtherHeights.Append(rules.Catalog.UnitHeight).Min();
        return Messages.LowerThanOneCourse(
            lines.Outline.Box.Top, lines.Heights.Bed.Min + least + WallHeights.HeadGap(lines.Wall, rules), rules.Catalog.Units);
    }

    private static IEnumerable<Finding> Bed(WallLines lines, Catalog catalog)
    {
        var bed = lines.Bands[0].Bottom;
        if (lines.Heights.StandsOnWall)
        {
            yield return new Finding(FindingCodes.BedOutOfRange, Messages.StandsOnWall(bed, catalog.Units)) { Severity = Severity.Note };
        }
        else if (!catalog.LevellingBed.Contains(bed))
        {
            yield return new Finding(FindingCodes.BedOutOfRange, Messages.BedOutOfRange(bed, catalog.LevellingBed, catalog.Units));
        }
    }

    private static IEnumerable<Finding> CutCourses(WallLines lines, LayoutRules rules)
    {
        var cut = lines.Bands.Where(band => IsCut(band, rules.Catalog) && (lines.Heights.IsLevel || band.Number == 1)).ToList();
        if (cut.Count > 0)
        {
            var (lower, higher) = NearestHeights(lines, rules);
            yield return new Finding(
                FindingCodes.HeightOffCourse,
                Messages.HeightOffCourse([.. cut.Select(band => (band.Number, band.Height))], lower, higher, rules.Catalog.Units),
                new FindingPlace { Z = cut[0].Bottom, Course = cut[0].Number });
        }
    }

    private static IEnumerable<Finding> Top(WallLines lines, LayoutRules rules)
    {
        var top = lines.Bands[^1].Top;
        var gap = lines.Outline.Box.Top - top;
        if (gap <= rules.Catalog.BedJoint.Nominal)
        {
            yield break;
        }

        var headGap = WallHeights.HeadGap(lines.Wall, rules);
        var (lower, higher) = NearestHeights(lines, rules);
        var place = new FindingPlace { Z = top };
        yield return headGap > Length.Zero && gap <= headGap + rules.Set.MortarRest
            ? new Finding(FindingCodes.OutlineNotFilled, Messages.HeadGap(gap, rules.Catalog.Units), place) { Severity = Severity.Note }
            : new Finding(FindingCodes.OutlineNotFilled, Messages.TopOpen(gap, lower, higher, rules.Catalog.Units), place);
    }

    /// <summary>The heights of the wall, next below and above its own, that its courses fill without a cut.</summary>
    private static (Length? Lower, Length Higher) NearestHeights(WallLines lines, LayoutRules rules)
    {
        var (catalog, group, first) = (rules.Catalog, lines.Group.Lines, lines.Bands[0]);
        var firstTop = IsCut(first, catalog) ? lines.Heights.Bed.Nominal + group.Height(first.Line) : first.Top;
        var height = lines.Outline.Box.Top;
        var full = Enumerable.Range(first.Line, lines.Bands.Length + 2)
            .SelectMany(line => catalog.OtherHeights.Where(_ => line > first.Line).Select(other => group.Bottom(line) + other).Append(group.Top(line)))
            .Select(top => firstTop + (top - group.Top(first.Line)) + WallHeights.HeadGap(lines.Wall, rules))
            .Order()
            .ToList();
        var lower = full.Where(candidate => candidate < height).Select(candidate => (Length?)candidate).LastOrDefault();
        return (lower, full.First(candidate => candidate > height));
    }

    private static bool IsCut(CourseBand band, Catalog catalog) => band.Height != catalog.UnitHeight && !catalog.OtherHeights.Contains(band.Height);
}
