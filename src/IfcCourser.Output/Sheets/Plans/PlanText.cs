using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>Every word that a storey sheet prints beside those of <see cref="SheetText"/>.</summary>
internal static class PlanText
{
    public const string Plan = "Plan";

    public const string DocumentType = "Storey plan";

    public const string MovementJoint = "MJ";

    public const string WallTable = "Walls of this storey, from A to B";

    public const string AskewTable = "Ends of walls askew or curved";

    public const string LegendCut = "sawn; length here or on W sheet";

    public const string LegendPart = "bought shorter, not sawn";

    public const string LegendCore = "core with its bar";

    public const string LegendAbove = "jambs of an opening over this course";

    public const string LegendRunning = "opening, then distance from zero";

    public const string LegendWall = "wall, and its sheet";

    public const string LegendOpening = "opening, as on the wall's sheet";

    /// <summary>Where a course begins away from its wall's end.</summary>
    public const string FirstBlock = "first block";

    public const string LastBlock = "last block";

    public static string Course(int index) => index == 0 ? "first course" : "second course";

    public const string LegendGone = "wall of the last issue, not laid out now";

    public static string Number(int number) => FormattableString.Invariant($"P{number:00}");

    public static string Title(string? storey, int index) => $"{storey ?? SheetText.UnnamedStorey}, {Course(index)}";

    /// <summary>The sheet of a part of a plan: P01.2.</summary>
    public static string Part(string number, int part) => FormattableString.Invariant($"{number}.{part}");

    public static string Gone(WallIdentity wall) => $"gone: {Short(wall)}";

    public static string GoneSince(string mark, IEnumerable<WallIdentity> walls) =>
        $"Rev. {mark}: laid out no more since the last issue, drawn dashed and struck where it stood: {string.Join(", ", walls.Select(Short))}.";

    /// <param name="walls">Numbers of their sheets.</param>
    public static string Revised(string mark, IEnumerable<string> walls) => $"Rev. {mark}: changed here since the last issue: {string.Join(", ", walls)}; their sheets say what.";

    public static string Parted(PlanPart part) => FormattableString.Invariant(
        $"Part {part.Index} of {part.Count} of this plan: see the key plan. Blocks that a match line crosses stand on both sheets, whole; dimensions run on from the same zero lines.");

    public static IEnumerable<string> Notes(PlanFacts facts)
    {
        yield return facts.Text.Units == Units.UnitSystem.Inch
            ? "Dimensions in feet and inches from the zero lines; lengths of sawn blocks in inches."
            : "Dimensions in millimetres from the zero lines.";
        yield return facts.Index == 0
            ? "The first course of each wall, on its levelling bed, as bonded at corners and tees."
            : "The second course of each wall, as bonded at corners and tees. Later courses repeat the first or the second where the wall's sheet says so.";
        yield return $"The wall sheets have every joint, measured from A; lay from A to B. Head joints {facts.Text.WithUnit(facts.Layout.Rules.Catalog.HeadJoint.Nominal)} where they say nothing else.";
        if (facts.Part is { } part)
        {
            yield return Parted(part);
        }

        if (facts.Walls.Any(wall => facts.AxisOf(wall) is null))
        {
            yield return "Walls askew to the plan or curved have no running dimensions here: a table has the ends of the face that their sheets show, from the zero lines; the rest is measured from A there.";
        }
    }

    private static string Short(WallIdentity wall)
    {
        const double Widest = 60;
        return TextMetrics.Fit(wall.Label, 2.5, Widest);
    }
}
