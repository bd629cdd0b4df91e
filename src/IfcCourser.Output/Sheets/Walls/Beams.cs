using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Bond beams: their edge and bars, with tag and bars written where blocks leave room; a formed one is hatched.</summary>
internal static class Beams
{
    private const double TextHeight = 2.5;
    private const int Places = 24;

    public static void Draw(Canvas canvas, WallFacts facts)
    {
        foreach (var beam in facts.Wall.BondBeams)
        {
            var outline = OutlineOf(beam);
            var label = Label(canvas, facts, beam, outline);
            if (beam.Kind != BondBeamKind.Trough)
            {
                canvas.Add(new HatchItem(Pen.LintelHatch, [outline], HatchKind.Formed));
            }

            canvas.Add(new PolylineItem(Pen.Lintel, outline, PathEnd.Closed));
            if (label is not null)
            {
                canvas.Write(label);
            }
        }
    }

    private static ImmutableArray<Point> OutlineOf(BondBeam beam) => beam.Outline is { } outline
        ? [.. outline.Select(point => new Point(point.S.Mm, point.Z.Mm))]
        : new Box(beam.From.Mm, beam.Bottom.Mm, beam.To.Mm, beam.Top.Mm).Corners();

    /// <summary>
    /// The first free place from the middle outwards inside a block; failing that one that crosses joints, then one on a piece that is cut, whose own length has to stand there, then one that crosses an axis; else none:
    /// the table has it.
    /// </summary>
    private static TextItem? Label(Canvas canvas, WallFacts facts, BondBeam beam, ImmutableArray<Point> outline)
    {
        var cuts = facts.Wall.Courses.SelectMany(course => course.Pieces).Where(piece => !PieceBlock.IsWhole(piece))
            .Select(piece => new Box(piece.From.Mm, piece.Bottom.Mm, piece.To.Mm, piece.Top.Mm)).ToArray();
        var places = Enumerable.Range(0, Places)
            .Select(i => 0.5 + ((i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) / (double)Places))
            .Select(share => beam.From.Mm + (share * (beam.To - beam.From).Mm))
            .Select(s => (S: s, Column: Polygon.Column(outline, s)))
            .Select(place => new TextItem(
                Pen.Text, new Point(place.S, (place.Column.Low + place.Column.High) / 2), SheetText.BeamLabel(beam), TextHeight, TextAnchor.Middle))
            .Where(text => Polygon.Contains(outline, ItemBox.Of(text, canvas.PerPaper)))
            .ToList();
        return places.Find(text => BoxOf(text) is var box && canvas.IsFree(box) && canvas.IsFreeOfJoints(box) && IsFreeOfCuts(box))
            ?? places.Find(text => BoxOf(text) is var box && canvas.IsFree(box) && IsFreeOfCuts(box))
            ?? places.Find(text => canvas.IsFree(BoxOf(text))) ?? places.Find(text => canvas.IsFreeOfText(BoxOf(text)));

        bool IsFreeOfCuts(Box box) => !Array.Exists(cuts, box.Overlaps);

        Box BoxOf(TextItem text) => ItemBox.Of(text, canvas.PerPaper);
    }
}
