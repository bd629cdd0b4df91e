using IfcCourser.Catalogs;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Samples of the marks that this wall's elevation uses, with their meaning.</summary>
internal static class Legend
{
    public static Panel Of(WallFacts facts)
    {
        var wall = facts.Wall;
        var rows = new[]
        {
            (true, MarkSamples.Row(SheetText.LegendWhole, PolylineItem.Rectangle(Pen.WholeBlock, MarkSamples.Face))),
            (facts.Schedule.Rows.Any(row => row.Example.Cut != Layouts.Cuts.None), MarkSamples.Row(
                SheetText.LegendCut,
                new HatchItem(Pen.CutHatch, [MarkSamples.Face.Corners()], HatchKind.Cut),
                PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face))),
            (facts.Schedule.Rows.Any(row => row.Example.Cut.HasFlag(Layouts.Cuts.Rake)), MarkSamples.Row(
                SheetText.LegendShape, new PolylineItem(Pen.CutBlock, [new(1, -5), new(MarkSamples.Width, -5), new(MarkSamples.Width, -1)], PathEnd.Closed))),
            (facts.Schedule.Rows.Any(row => row.Example.Cut == Layouts.Cuts.None), MarkSamples.Row(
                SheetText.LegendPart, PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face))),
            (facts.Schedule.Rows.Any(row => row.Example.Cut != Layouts.Cuts.None), MarkSamples.Row(SheetText.LegendCodes, MarkSamples.Word("L H R N"))),
            (facts.Schedule.Rows.Any(row => SheetText.CutCode(row.Example).Length > 1), MarkSamples.Row(SheetText.LegendJoined, MarkSamples.Word("LH"))),
            (wall.Lintels.Any(lintel => lintel.Kind == LintelKind.Formed), MarkSamples.Row(
                SheetText.LegendFormed,
                new HatchItem(Pen.LintelHatch, [MarkSamples.Face.Corners()], HatchKind.Formed),
                PolylineItem.Rectangle(Pen.Lintel, MarkSamples.Face))),
            (wall.Lintels.Any(lintel => lintel.Kind != LintelKind.Formed), MarkSamples.Row(
                SheetText.LegendLintel,
                new HatchItem(Pen.LintelHatch, [MarkSamples.Face.Corners()], HatchKind.Carries),
                PolylineItem.Rectangle(Pen.Lintel, MarkSamples.Face))),
            (!wall.BondBeams.IsEmpty, MarkSamples.Row(SheetText.LegendBeam, PolylineItem.Rectangle(Pen.Lintel, MarkSamples.Face))),
            (wall.Openings.Any(opening => opening is { Interrupts: true, Outline: not null }), MarkSamples.Row(
                SheetText.LegendArch,
                new HatchItem(Pen.CutHatch, [MarkSamples.Face.Corners()], HatchKind.Formed),
                PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face))),
            (NeighbourEnds.Of(facts).Any(), MarkSamples.Row(
                SheetText.LegendNeighbour, [.. NeighbourEnds.Cross(MarkSamples.Face)])),
            (Abutments.Of(facts).Any(), MarkSamples.Row(SheetText.LegendAbuts, Abutments.Bar(MarkSamples.Face with { Bottom = -3.75, Top = -2.25 }))),
            (!wall.MovementJoints.IsEmpty, MarkSamples.Row(
                SheetText.LegendMovementJoint,
                new LineItem(Pen.MovementJoint, new Point(7, -MarkSamples.RowHeight + 0.5), new Point(7, -0.5)),
                new LineItem(Pen.MovementJoint, new Point(8, -MarkSamples.RowHeight + 0.5), new Point(8, -0.5)))),
            (!wall.Cores.IsEmpty, MarkSamples.Row(SheetText.LegendCore, MarkSamples.Across(Pen.Core))),
            (wall.Courses.SelectMany(course => course.Pieces).Any(piece => piece.Notch is not null), MarkSamples.Row(
                SheetText.LegendNotch, PolylineItem.Rectangle(Pen.BuiltIn, new Box(5, -MarkSamples.RowHeight + 1, 10, -1)))),
            (wall.Openings.Any(opening => opening.Placed != opening.Design), MarkSamples.Row(SheetText.LegendDesigned, MarkSamples.Across(Pen.DesignedJamb))),
            (true, MarkSamples.Row(SheetText.LegendLevel, MarkSamples.Across(Pen.LevelLine))),
            (wall.ModuleLines.Pitch > default(Units.Length), MarkSamples.Row(
                SheetText.LegendModule, new LineItem(Pen.ModuleTick, new Point(7, -2), new Point(7, -4)))),
        };
        return MarkSamples.Of(rows);
    }
}
