using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>What stands beside a course's plan: its walls, legend, notes, cautions.</summary>
internal static class PlanPanels
{
    public static ImmutableArray<Panel> Of(PlanFacts facts)
    {
        Panel[] panels =
        [
            Walls(facts), Askew(facts), Legend(facts), WordList.Of(SheetText.Notes, PlanText.Notes(facts).Concat(facts.Clouds.Notes(facts.NumberOf))), Cautions.Panel,
        ];
        return [.. panels.Where(panel => !panel.Rows.IsEmpty)];
    }

    private static Panel Walls(PlanFacts facts) => Table.Of(
        PlanText.WallTable,
        ["Wall", "Name", "Length", "Thick"],
        1,
        facts.Walls.Select(wall => ImmutableArray.Create(
            facts.NumberOf(wall), wall.Identity.Name ?? SheetText.UnnamedWall, facts.Text.Dimension(wall.Frame.Length), facts.Text.Piece(wall.Frame.Thickness))));

    /// <summary>Where the faces that their sheets show begin and end: no tier measures them.</summary>
    private static Panel Askew(PlanFacts facts)
    {
        return Table.Of(PlanText.AskewTable, ["Wall", "End", "x", "y"], 1, facts.Walls.Where(wall => facts.AxisOf(wall) is null).SelectMany(Ends));

        IEnumerable<ImmutableArray<string>> Ends(WallLayout wall) => new[] { ("A", wall.Wall.RightFace.From), ("B", wall.Wall.RightFace.To) }.Select(end =>
        {
            var at = facts.At(wall, end.Item2, wall.Frame.Thickness);
            return ImmutableArray.Create(facts.NumberOf(wall), end.Item1, facts.Text.Dimension(at.X), facts.Text.Dimension(at.Y));
        });
    }

    private static Panel Legend(PlanFacts facts)
    {
        var pieces = facts.Walls.SelectMany(wall => facts.CourseOf(wall).Pieces).ToArray();
        return MarkSamples.Of(
        [
            (true, MarkSamples.Row(SheetText.LegendWhole, PolylineItem.Rectangle(Pen.WholeBlock, MarkSamples.Face))),
            (pieces.Any(piece => piece.Cut != Cuts.None), MarkSamples.Row(
                PlanText.LegendCut,
                new HatchItem(Pen.CutHatch, [MarkSamples.Face.Corners()], HatchKind.Cut),
                PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face))),
            (pieces.Any(piece => piece.Cut == Cuts.None && !PieceBlock.IsWhole(piece)), MarkSamples.Row(
                PlanText.LegendPart, PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face))),
            (facts.Walls.Any(wall => !wall.Cores.IsEmpty), MarkSamples.Row(
                PlanText.LegendCore, ArcItem.Circle(Pen.Core, MarkSamples.Middle, 1.8), MarkSamples.Across(Pen.Core))),
            EmbedMarks.LegendRow(facts.Walls),
            facts.Clouds.LegendRow(),
            GoneWalls.LegendRow(facts.Gone),
            (facts.Walls.Any(wall => !wall.MovementJoints.IsEmpty), MarkSamples.Row(
                SheetText.LegendMovementJoint,
                new LineItem(Pen.MovementJoint, new Point(7, -MarkSamples.RowHeight + 0.5), new Point(7, -0.5)),
                new LineItem(Pen.MovementJoint, new Point(8, -MarkSamples.RowHeight + 0.5), new Point(8, -0.5)))),
            (facts.Walls.Any(wall => facts.OpeningsOver(wall).Any()), MarkSamples.Row(PlanText.LegendAbove, MarkSamples.Across(Pen.OpeningAbove))),
            (true, MarkSamples.Row(PlanText.LegendWall, MarkSamples.Word("W001", 0, Pen.Heading))),
            (facts.Walls.Any(wall => !wall.Openings.IsEmpty), MarkSamples.Row(PlanText.LegendOpening, MarkSamples.Word("D1"))),
            (true, MarkSamples.Row(PlanText.LegendRunning, MarkSamples.Word("W1 1250", 0, Pen.Dimension))),
        ]);
    }
}
