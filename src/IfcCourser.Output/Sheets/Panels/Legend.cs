using IfcCourser.Catalogs;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Samples of the marks that this wall's elevation uses, with their meaning.</summary>
internal static class Legend
{
    private const double RowHeight = 6;
    private const double SampleWidth = 14;

    public static Panel Of(WallFacts facts)
    {
        var wall = facts.Wall;
        var rows = new[]
        {
            (true, Row(SheetText.LegendWhole, PolylineItem.Rectangle(Pen.WholeBlock, Sample))),
            (facts.Schedule.Rows.Any(row => row.Example.Cut != Layouts.Cuts.None), Row(
                SheetText.LegendCut,
                new HatchItem(Pen.CutHatch, [Sample.Corners()], HatchKind.Cut),
                PolylineItem.Rectangle(Pen.CutBlock, Sample))),
            (facts.Schedule.Rows.Any(row => row.Example.Cut.HasFlag(Layouts.Cuts.Rake)), Row(
                SheetText.LegendShape, new PolylineItem(Pen.CutBlock, [new(1, -5), new(SampleWidth, -5), new(SampleWidth, -1)], PathEnd.Closed))),
            (facts.Schedule.Rows.Any(row => row.Example.Cut == Layouts.Cuts.None), Row(
                SheetText.LegendPart, PolylineItem.Rectangle(Pen.CutBlock, Sample))),
            (facts.Schedule.Rows.Any(row => row.Example.Cut != Layouts.Cuts.None), Row(SheetText.LegendCodes, Word("L H R N"))),
            (facts.Schedule.Rows.Any(row => SheetText.CutCode(row.Example).Length > 1), Row(SheetText.LegendJoined, Word("LH"))),
            (wall.Lintels.Any(lintel => lintel.Kind == LintelKind.Formed), Row(
                SheetText.LegendFormed,
                new HatchItem(Pen.LintelHatch, [Sample.Corners()], HatchKind.Formed),
                PolylineItem.Rectangle(Pen.Lintel, Sample))),
            (wall.Lintels.Any(lintel => lintel.Kind != LintelKind.Formed), Row(
                SheetText.LegendLintel,
                new HatchItem(Pen.LintelHatch, [Sample.Corners()], HatchKind.Carries),
                PolylineItem.Rectangle(Pen.Lintel, Sample))),
            (!wall.BondBeams.IsEmpty, Row(SheetText.LegendBeam, PolylineItem.Rectangle(Pen.Lintel, Sample))),
            (wall.Openings.Any(opening => opening is { Interrupts: true, Outline: not null }), Row(
                SheetText.LegendArch,
                new HatchItem(Pen.CutHatch, [Sample.Corners()], HatchKind.Formed),
                PolylineItem.Rectangle(Pen.CutBlock, Sample))),
            (NeighbourEnds.Of(facts).Any(), Row(
                SheetText.LegendNeighbour, [.. NeighbourEnds.Cross(Sample)])),
            (Abutments.Of(facts).Any(), Row(SheetText.LegendAbuts, Abutments.Bar(Sample with { Bottom = -3.75, Top = -2.25 }))),
            (!wall.MovementJoints.IsEmpty, Row(
                SheetText.LegendMovementJoint,
                new LineItem(Pen.MovementJoint, new Point(7, -RowHeight + 0.5), new Point(7, -0.5)),
                new LineItem(Pen.MovementJoint, new Point(8, -RowHeight + 0.5), new Point(8, -0.5)))),
            (!wall.Cores.IsEmpty, Row(SheetText.LegendCore, Across(Pen.Core))),
            (wall.Courses.SelectMany(course => course.Pieces).Any(piece => piece.Notch is not null), Row(
                SheetText.LegendNotch, PolylineItem.Rectangle(Pen.BuiltIn, new Box(5, -RowHeight + 1, 10, -1)))),
            (wall.Openings.Any(opening => opening.Placed != opening.Design), Row(SheetText.LegendDesigned, Across(Pen.DesignedJamb))),
            (true, Row(SheetText.LegendLevel, Across(Pen.LevelLine))),
            (wall.ModuleLines.Pitch > default(Units.Length), Row(
                SheetText.LegendModule, new LineItem(Pen.ModuleTick, new Point(7, -2), new Point(7, -4)))),
        };
        var shown = rows.Where(row => row.Item1).Select(row => row.Item2).ToArray();
        var picture = shown.SelectMany((row, i) => row.Items.Select(item => item.MovedBy(new Point(0, -i * RowHeight))));
        return new Panel([Table.Heading(SheetText.Legend)], [new PanelRow(shown.Length * RowHeight, [.. picture])]);
    }

    private static Box Sample => new(1, -RowHeight + 1, SampleWidth, -1);

    private static TextItem Word(string word) =>
        new(Pen.Text, new Point(SampleWidth / 2, -RowHeight / 2), word, Table.TextHeight, TextAnchor.Middle);

    private static LineItem Across(Pen pen) => new(pen, new Point(0, -RowHeight / 2), new Point(SampleWidth + 1, -RowHeight / 2));

    private static PanelRow Row(string meaning, params ReadOnlySpan<SheetItem> sample) => new(
        RowHeight,
        [
            .. sample,
            new TextItem(
                Pen.Text,
                new Point(SampleWidth + 4, -RowHeight / 2),
                TextMetrics.Fit(meaning, Table.TextHeight, Panel.Width - SampleWidth - 4),
                Table.TextHeight,
                TextAnchor.MiddleLeft),
        ]);
}
