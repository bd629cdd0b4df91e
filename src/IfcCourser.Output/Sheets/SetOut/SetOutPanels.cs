using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>What stands beside the plan: bars, their blocks, control points, diagonals, lines to sign, key, notes, cautions.</summary>
internal static class SetOutPanels
{
    private const double SignHeight = 12;
    private const double TextHeight = 2.5;

    public static ImmutableArray<Panel> Of(SetOutFacts facts)
    {
        Panel[] panels =
        [
            Bars(facts), Skew(facts), Checks(facts), RunningOn(facts), Schedule(facts), Control(facts), Diagonals(facts), SetOutLegend.Of(facts), SignOff(facts),
            WordList.Of(SheetText.Notes, SetOutText.Notes(facts).Concat(facts.Clouds.Notes(wall => WallNumbers.Sheet(facts.Layout, wall))).Concat(facts.Storey.Findings.Select(finding => SetOutText.Sentence(finding.Message)))), Cautions.Panel,
        ];
        return [.. panels.Where(panel => !panel.Rows.IsEmpty)];
    }

    /// <summary>Of the whole storey, on its first sheet: bars are ordered for a storey.</summary>
    private static Panel Schedule(SetOutFacts facts) => BarTables.Schedule(
        facts.Layout, facts.Part is { Index: > 1 } ? [] : facts.Layout.Walls.Where(wall => wall.Identity.Storey == facts.Whole.Storey).Select(wall => wall.Identity.GlobalId));

    private static Panel Bars(SetOutFacts facts) => Table.Of(
        SetOutText.Bars,
        ["No", "Why", "x", "y"],
        1,
        facts.CastIn.Select(bar => ImmutableArray.Create(
            Number(bar.Number),
            string.Join(", ", facts.CoreOf(bar).Why.Select(SheetText.BarReason).Concat(facts.Held.Contains(bar.Number) ? [SetOutText.Held] : [])),
            facts.Text.Dimension(bar.X),
            facts.Text.Dimension(bar.Y))));

    private static Panel Checks(SetOutFacts facts) => Table.Of(
        SetOutText.Checks,
        ["No", "Wall, core", "In", "Back", "On", "Up", "dx, dy as built"],
        6,
        facts.CastIn.Select(bar => (Bar: bar, Block: facts.BlockOf(bar))).Select(row => ImmutableArray.Create(
            Number(row.Bar.Number),
            $"{facts.WallNumber(row.Bar.Wall)} {row.Bar.Core}",
            row.Block is { } block ? SetOutText.Of(block.Way) : "-",
            row.Block is { } back ? facts.Text.Piece(back.Back) : "-",
            row.Block is { } on ? facts.Text.Piece(on.On) : "-",
            facts.Text.Piece(facts.StarterOf(row.Bar).StickUp),
            string.Empty)));

    /// <summary>Bars that stand through this slab, for which nothing is cast into it.</summary>
    private static Panel RunningOn(SetOutFacts facts) => Table.Of(
        SetOutText.RunningOn,
        ["No", "Wall, core", "x", "y"],
        2,
        facts.Storey.Bars.Where(bar => bar.Foot == BarFoot.BarBelow).Select(bar => ImmutableArray.Create(
            Number(bar.Number), $"{facts.WallNumber(bar.Wall)} {bar.Core}", facts.Text.Dimension(bar.X), facts.Text.Dimension(bar.Y))));

    private static Panel Skew(SetOutFacts facts) => Table.Of(
        SetOutText.SkewBars,
        ["No", "From point", "Along the face", "Square to it"],
        3,
        facts.CastIn.Where(bar => bar.OnFace is not null).Select(bar => ImmutableArray.Create(
            Number(bar.Number), Number(bar.OnFace!.Corner), facts.Text.Dimension(bar.OnFace.Along), facts.Text.Dimension(bar.OnFace.Across))));

    private static Panel Control(SetOutFacts facts) => Table.Of(
        SetOutText.ControlPoints,
        ["No", "What", "x", "y"],
        1,
        facts.Storey.ControlPoints.Select(point => ImmutableArray.Create(
            Number(point.Number), SetOutText.What(point), facts.Text.Dimension(point.X), facts.Text.Dimension(point.Y))));

    private static Panel Diagonals(SetOutFacts facts) => Table.Of(
        SetOutText.Diagonals,
        ["From", "To", "Length"],
        2,
        facts.Whole.Diagonals.Select(diagonal => ImmutableArray.Create(Number(diagonal.From), Number(diagonal.To), facts.Text.Dimension(diagonal.Length))));

    private static Panel SignOff(SetOutFacts facts) => new(
        [Table.Heading(SetOutText.SignOff)],
        [
            .. SetOutText.SignLines(facts).Select(line => new PanelRow(
                SignHeight,
                [
                    new TextItem(Pen.Text, new Point(0, -4), line, TextHeight),
                    new LineItem(Pen.Table, new Point(0, -SignHeight + 0.5), new Point(Panel.Width, -SignHeight + 0.5)),
                ])),
        ]);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
