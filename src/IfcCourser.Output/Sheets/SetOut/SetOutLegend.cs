using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>Samples of the marks that a set-out plan uses, with their meaning.</summary>
internal static class SetOutLegend
{
    public static Panel Of(SetOutFacts facts)
    {
        var rows = new[]
        {
            (!facts.CastIn.IsEmpty, MarkSamples.Row(SetOutText.LegendBar, [new HatchItem(Pen.Text, [Disc], HatchKind.Solid), MarkSamples.Word("7", 3.2, Pen.Heading)])),
            (true, MarkSamples.Row(SetOutText.LegendControl, [.. Cross, MarkSamples.Word("101", 4.5, Pen.Dimension)])),
            (true, MarkSamples.Row(SetOutText.LegendZero, [ArcItem.Circle(Pen.Dimension, MarkSamples.Middle, 0.8), MarkSamples.Across(Pen.Dimension)])),
            (true, facts.CastIn.IsEmpty
                ? MarkSamples.Row(PlanText.LegendRunning, [MarkSamples.Word("W1 1250", 0, Pen.Dimension)])
                : MarkSamples.Row(SetOutText.LegendRunning, [MarkSamples.Word(facts.Text.Units == UnitSystem.Inch ? "3-5 4'-2\"" : "3-5 1250", 0, Pen.Dimension)])),
            (true, MarkSamples.Row(SetOutText.LegendFace, [MarkSamples.Across(Pen.OuterEdge)])),
            (true, MarkSamples.Row(SetOutText.LegendEnd, [MarkSamples.Across(Pen.Neighbour), new LineItem(Pen.OuterEdge, MarkSamples.Middle - new Point(0, 2), MarkSamples.Middle + new Point(0, 2))])),
            (true, MarkSamples.Row(SetOutText.LegendWall, [MarkSamples.Word("W001")])),
            (true, MarkSamples.Row(SetOutText.LegendJoint, [MarkSamples.Across(Pen.Neighbour)])),
            (facts.Storey.Outlines.Any(outline => outline.Kind == ControlLineKind.SlabEdge), MarkSamples.Row(SetOutText.LegendSlab, [MarkSamples.Across(Pen.SlabEdge)])),
            (!facts.Storey.Grid.IsEmpty, MarkSamples.Row(SetOutText.LegendGrid, [MarkSamples.Across(Pen.GridLine)])),
            EmbedMarks.LegendRow(facts.Walls),
            facts.Clouds.LegendRow(),
            GoneWalls.LegendRow(facts.Course.Gone),
            (!facts.Whole.Diagonals.IsEmpty, MarkSamples.Row(SetOutText.LegendDiagonal, [new LineItem(Pen.Neighbour, new Point(1, -MarkSamples.RowHeight + 1), new Point(MarkSamples.Width, -1))])),
        };
        return MarkSamples.Of(rows);
    }

    private static ImmutableArray<Point> Disc => [.. Enumerable.Range(0, 16).Select(i => ArcItem.Circle(Pen.Text, MarkSamples.Middle, 0.75).PointAt(22.5 * i))];

    private static SheetItem[] Cross =>
    [
        new LineItem(Pen.Dimension, MarkSamples.Middle - new Point(1.2, 1.2), MarkSamples.Middle + new Point(1.2, 1.2)),
        new LineItem(Pen.Dimension, MarkSamples.Middle - new Point(1.2, -1.2), MarkSamples.Middle + new Point(1.2, -1.2)),
    ];
}
