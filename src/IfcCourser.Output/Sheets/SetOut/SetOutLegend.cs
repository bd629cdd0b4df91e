using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>Samples of the marks that a set-out plan uses, with their meaning.</summary>
internal static class SetOutLegend
{
    private const double RowHeight = 6;
    private const double SampleWidth = 14;

    private static readonly Point _middle = new(SampleWidth / 2, -RowHeight / 2);

    public static Panel Of(SetOutFacts facts)
    {
        var rows = new[]
        {
            (true, Row(SetOutText.LegendBar, [new HatchItem(Pen.Text, [Disc], HatchKind.Solid), Word("7", 3.2, Pen.Heading)])),
            (true, Row(SetOutText.LegendControl, [.. Cross, Word("101", 4.5, Pen.Dimension)])),
            (true, Row(SetOutText.LegendZero, [ArcItem.Circle(Pen.Dimension, _middle, 0.8), Across(Pen.Dimension)])),
            (true, Row(SetOutText.LegendRunning, [Word("3-5   1250", 0, Pen.Dimension)])),
            (true, Row(SetOutText.LegendFace, [Across(Pen.OuterEdge)])),
            (true, Row(SetOutText.LegendJoint, [Across(Pen.Neighbour)])),
            (facts.Storey.Outlines.Any(outline => outline.Kind == ControlLineKind.SlabEdge), Row(SetOutText.LegendSlab, [Across(Pen.SlabEdge)])),
            (!facts.Storey.Grid.IsEmpty, Row(SetOutText.LegendGrid, [Across(Pen.GridLine)])),
            (!facts.Storey.Diagonals.IsEmpty, Row(SetOutText.LegendDiagonal, [new LineItem(Pen.Neighbour, new Point(1, -RowHeight + 1), new Point(SampleWidth, -1))])),
        };
        var shown = rows.Where(row => row.Item1).Select(row => row.Item2).ToArray();
        var picture = shown.SelectMany((row, i) => row.Items.Select(item => item.MovedBy(new Point(0, -i * RowHeight))));
        return new Panel([Table.Heading(SheetText.Legend)], [new PanelRow(shown.Length * RowHeight, [.. picture])]);
    }

    private static ImmutableArray<Point> Disc => [.. Enumerable.Range(0, 16).Select(i => ArcItem.Circle(Pen.Text, _middle, 0.75).PointAt(22.5 * i))];

    private static SheetItem[] Cross =>
    [
        new LineItem(Pen.Dimension, _middle - new Point(1.2, 1.2), _middle + new Point(1.2, 1.2)),
        new LineItem(Pen.Dimension, _middle - new Point(1.2, -1.2), _middle + new Point(1.2, -1.2)),
    ];

    private static TextItem Word(string word, double aside, Pen pen) =>
        new(pen, _middle + new Point(aside, 0), word, Table.TextHeight, TextAnchor.Middle);

    private static LineItem Across(Pen pen) => new(pen, new Point(1, -RowHeight / 2), new Point(SampleWidth, -RowHeight / 2));

    private static PanelRow Row(string meaning, ImmutableArray<SheetItem> sample) => new(
        RowHeight, [.. sample, new TextItem(Pen.Text, new Point(SampleWidth + 4, -RowHeight / 2), meaning, Table.TextHeight, TextAnchor.MiddleLeft)]);
}
