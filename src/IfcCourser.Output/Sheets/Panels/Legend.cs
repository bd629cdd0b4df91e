using IfcCourser.Catalogs;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Samples of the marks that the sheet's elevations use, with their meaning.</summary>
internal static class Legend
{
    public static Panel Of(ImmutableArray<WallFacts> walls)
    {
        var rows = new[]
        {
            (true, MarkSamples.Row(SheetText.LegendWhole, PolylineItem.Rectangle(Pen.WholeBlock, MarkSamples.Face))),
            (Cuts(row => row.Example.Cut != Layouts.Cuts.None), MarkSamples.Row(
                SheetText.LegendCut,
                new HatchItem(Pen.CutHatch, [MarkSamples.Face.Corners()], HatchKind.Cut),
                PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face))),
            (Cuts(row => row.Example.Cut.HasFlag(Layouts.Cuts.Rake)), MarkSamples.Row(
                SheetText.LegendShape, new PolylineItem(Pen.CutBlock, [new(1, -5), new(MarkSamples.Width, -5), new(MarkSamples.Width, -1)], PathEnd.Closed))),
            (Cuts(row => row.Example.Cut == Layouts.Cuts.None), MarkSamples.Row(
                SheetText.LegendPart, PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face))),
            (Cuts(row => row.Example.Cut != Layouts.Cuts.None), MarkSamples.Row(SheetText.LegendCodes, MarkSamples.Word("L H R N"))),
            (Cuts(row => SheetText.CutCode(row.Example).Length > 1), MarkSamples.Row(SheetText.LegendJoined, MarkSamples.Word("LH"))),
            (walls.Any(one => one.Wall.Lintels.Any(lintel => lintel.Kind == LintelKind.Formed)), MarkSamples.Row(
                SheetText.LegendFormed,
                new HatchItem(Pen.LintelHatch, [MarkSamples.Face.Corners()], HatchKind.Formed),
                PolylineItem.Rectangle(Pen.Lintel, MarkSamples.Face))),
            (walls.Any(one => one.Wall.Lintels.Any(lintel => lintel.Kind != LintelKind.Formed)), MarkSamples.Row(
                SheetText.LegendLintel,
                new HatchItem(Pen.LintelHatch, [MarkSamples.Face.Corners()], HatchKind.Carries),
                PolylineItem.Rectangle(Pen.Lintel, MarkSamples.Face))),
            (walls.Any(one => !one.Wall.BondBeams.IsEmpty), MarkSamples.Row(SheetText.LegendBeam, PolylineItem.Rectangle(Pen.Lintel, MarkSamples.Face))),
            (walls.Any(one => one.Wall.Openings.Any(opening => opening is { Interrupts: true, Outline: not null })), MarkSamples.Row(
                SheetText.LegendArch,
                new HatchItem(Pen.CutHatch, [MarkSamples.Face.Corners()], HatchKind.Formed),
                PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face))),
            (walls.Any(one => NeighbourEnds.Of(one).Any()), MarkSamples.Row(
                SheetText.LegendNeighbour, [.. NeighbourEnds.Cross(MarkSamples.Face)])),
            (walls.Any(one => Abutments.Of(one).Any()), MarkSamples.Row(SheetText.LegendAbuts, Abutments.Bar(MarkSamples.Face with { Bottom = -3.75, Top = -2.25 }))),
            (walls.Any(one => !one.Wall.MovementJoints.IsEmpty), MarkSamples.Row(
                SheetText.LegendMovementJoint,
                new LineItem(Pen.MovementJoint, new Point(7, -MarkSamples.RowHeight + 0.5), new Point(7, -0.5)),
                new LineItem(Pen.MovementJoint, new Point(8, -MarkSamples.RowHeight + 0.5), new Point(8, -0.5)))),
            (walls.Any(one => one.Revision is { Areas.IsEmpty: false }), MarkSamples.Row(
                SheetText.LegendRevised, [.. RevisionClouds.Around(MarkSamples.Face.Grown(-0.5), 1)])),
            (walls.Any(one => one.Stretch is not null), MarkSamples.Row(SheetText.LegendMatch, MarkSamples.Across(Pen.MatchLine))),
            (walls.Any(one => !one.Wall.Cores.IsEmpty), MarkSamples.Row(SheetText.LegendCore, MarkSamples.Across(Pen.Core))),
            (walls.Any(one => one.Wall.Courses.SelectMany(course => course.Pieces).Any(piece => piece.Notch is not null)), MarkSamples.Row(
                SheetText.LegendNotch, PolylineItem.Rectangle(Pen.BuiltIn, new Box(5, -MarkSamples.RowHeight + 1, 10, -1)))),
            (walls.Any(one => !one.Wall.Embeds.IsEmpty), MarkSamples.Row(
                SheetText.LegendBuiltIn,
                ArcItem.Circle(Pen.BuiltIn, MarkSamples.Middle - new Point(3, 0), 1.5),
                PolylineItem.Rectangle(Pen.BuiltIn, Box.At(MarkSamples.Middle + new Point(3, 0), 1.8, 1.8)))),
            (walls.Any(one => one.Wall.Openings.Any(opening => opening.Placed != opening.Design)), MarkSamples.Row(SheetText.LegendDesigned, MarkSamples.Across(Pen.DesignedJamb))),
            (true, MarkSamples.Row(SheetText.LegendLevel, MarkSamples.Across(Pen.LevelLine))),
            (walls.Any(one => one.Wall.ModuleLines.Pitch > default(Units.Length)), MarkSamples.Row(
                SheetText.LegendModule, new LineItem(Pen.ModuleTick, new Point(7, -2), new Point(7, -4)))),
        };
        return MarkSamples.Of(rows);

        bool Cuts(Func<PieceRow, bool> condition) => walls.Any(one => one.Schedule.Rows.Any(condition));
    }
}
