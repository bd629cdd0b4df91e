using IfcCourser.Slabs;
using IfcCourser.Units;
using static System.FormattableString;

namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>Every word that the sheets of a slab print beside those of <see cref="SheetText"/>.</summary>
internal static class SlabText
{
    public const string Plan = "Plan";
    public const string LevelSheet = "Slab levels";
    public const string CourseSheet = "First course on its bed";
    public const string Result = "Result";
    public const string Remedies = "Ways to bring the bed into its limits";
    public const string Places = "Where the bed leaves its limits";
    public const string Bars = "Bars as built";
    public const string Control = "Control points after the fit";
    public const string LegendBlock = "block of the first course";
    public const string LegendHigh = "too high: take off";
    public const string LegendLow = "too low: fill";
    public const string LegendReading = "reading, slab below the datum";
    public const string LegendContour = "line of equal bed";
    public const string LegendBed = "mean bed under the block";
    public const string LegendBeyond = "bed beyond the readings: guessed";

    public const string LevelledSheet = "First course as laid";
    public const string Works = "What to do";
    public const string Tolerances = "Beside standards' tolerances";
    public const string LegendRight = "block that is right";
    public const string LegendSand = "block to sand down";
    public const string LegendRelay = "block to lay again";
    public const string LegendOff = "off the level of the course";
    public const string LegendNotRead = "block that was not read";

    public static IEnumerable<string> LevelledNotes(LevelledCourse course, SheetLengths text)
    {
        yield return text.Units == UnitSystem.Inch ? "Heights in feet and inches, differences in inches." : "Heights and differences in millimetres.";
        yield return $"Neighbours may differ by {text.WithUnit(course.Step)}, all blocks by {text.WithUnit(course.Range)} (common practice, no source). The level is the mean of the most blocks that lie so near to each other.";
        yield return "Read the blocks again once they are worked on; the second course is laid on what is right.";
    }

    public static string Heights(ReadingHeights heights) => heights switch
    {
        ReadingHeights.Model => "the model",
        ReadingHeights.Survey => "the map",
        _ => "the readings' bench mark",
    };

    public static string Remedy(RemedyKind kind) => kind switch
    {
        RemedyKind.Trim => "trim blocks over highs",
        RemedyKind.Fill => "fill lows",
        RemedyKind.Grind => "grind highs",
        RemedyKind.TrimAndFill => "trim over highs, fill lows",
        RemedyKind.GrindAndFill => "grind highs, fill lows",
        RemedyKind.OtherUnits => "other unit heights",
        _ => "raise the datum only",
    };

    /// <summary>What the crew works to.</summary>
    public static IEnumerable<(string What, string Value)> Results(SlabFacts facts)
    {
        var (survey, text) = (facts.Survey, facts.Text);
        var field = survey.Field;
        yield return ("Underside of the first course (datum)", text.Dimension(survey.Datum));
        yield return ("Top of the first course", text.Dimension(survey.Datum + survey.Beds.MinBy(bed => bed.Block.Underside)!.Block.Piece.Height.Mm));
        yield return ("Heights of", Heights(survey.Readings.Heights));
        if (survey.Readings.Heights != ReadingHeights.Bench)
        {
            yield return ("Above the designed level", text.Height(Length.FromMm(survey.Chosen.Raised)));
        }

        yield return ("Bed on the slab as it is", $"{facts.Thickness(survey.Beds.Min(bed => bed.Least))} and {facts.ThicknessWithUnit(survey.Beds.Max(bed => bed.Most))}");
        yield return ("Limits of the bed", $"{text.Piece(field.Limits.Min)} and {text.WithUnit(field.Limits.Max)}");
        yield return ("Bed, mean", facts.ThicknessWithUnit(field.Room(survey.Chosen.Raised) / field.Area));
        yield return ("Mortar after that work, no waste", AmountText.Volume(survey.Chosen.Mortar / 1e6, facts.Units));
        yield return ("Readings", Invariant($"{survey.Readings.Levels.Length}"));
    }

    public static IEnumerable<string> Notes(SlabFacts facts)
    {
        var survey = facts.Survey;
        yield return facts.Units == UnitSystem.Inch ? "Heights in feet and inches; beds in inches." : "Heights and beds in millimetres.";
        yield return "Between readings the slab is taken as plane over triangles; only what lies under blocks of the first course counts, not doors and rooms.";
        yield return survey.Remedies.Length == 1
            ? "The datum is the lowest at which every block has the least bed; nowhere is the bed over its limit."
            : $"The datum is that of the cheapest way: {Remedy(survey.Chosen.Kind)}. Volumes are weighed: off blocks 1, filled 2, ground 6 (common practice, no source).";
        yield return "Set all blocks to one level: the bed takes up the slab. Check by the second stage when the course stands.";
        foreach (var finding in survey.Findings.Where(finding => finding.Code.Id is "heights-of-bench" or "bed-beyond-readings" or "readings-sparse" or "slab-off-level" or "flatness-not-judged"))
        {
            yield return finding.Message.EndsWith('.') ? finding.Message : $"{finding.Message}.";
        }
    }
}
