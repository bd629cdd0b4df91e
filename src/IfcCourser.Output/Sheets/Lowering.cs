namespace IfcCourser.Output.Sheets;

/// <summary>
/// Brings a sheet down to lines, paths, arcs, texts and solid faces in paper millimetres, for writers whose format
/// knows nothing more. Views are placed, blocks opened, dimensions and hatches drawn out.
/// </summary>
public static class Lowering
{
    /// <summary>Items in the order they are to be painted: views, then the sheet's own.</summary>
    public static IEnumerable<SheetItem> Lower(Sheet sheet)
    {
        foreach (var view in sheet.Views)
        {
            var placement = new Placement(view.ToPaper(default), 1.0 / view.Scale.Denominator);
            foreach (var item in view.Items.SelectMany(item => Lower(item, placement)))
            {
                yield return item;
            }
        }

        foreach (var item in sheet.Items.SelectMany(item => Lower(item, new Placement(default, 1))))
        {
            yield return item;
        }
    }

    private static IEnumerable<SheetItem> Lower(SheetItem item, Placement at) => item switch
    {
        LineItem line => [line with { From = at.Point(line.From), To = at.Point(line.To) }],
        PolylineItem path => [path with { Points = at.Points(path.Points) }],
        ArcItem arc => [arc with { Centre = at.Point(arc.Centre), Radius = arc.Radius * at.Factor }],
        TextItem text => [text with { At = at.Point(text.At) }],
        HatchItem hatch => HatchLines.Draw(hatch with { Loops = [.. hatch.Loops.Select(loop => at.Points(loop))] }, 1),
        DimensionItem dimension => DimensionPicture.Draw(dimension, 1 / at.Factor).SelectMany(part => Lower(part, at)),
        BlockItem block => Open(block, at),
        _ => throw new NotSupportedException(item.GetType().Name),
    };

    private static IEnumerable<SheetItem> Open(BlockItem block, Placement at)
    {
        var inner = new Placement(at.Point(block.At), at.Factor);
        return block.Definition.Items.Concat(block.ShownTexts()).SelectMany(item => Lower(item, inner));
    }

    private readonly record struct Placement(Point Origin, double Factor)
    {
        public Point Point(Point p) => Origin + (p * Factor);

        public ImmutableArray<Point> Points(ImmutableArray<Point> points)
        {
            var placement = this;
            return [.. points.Select(p => placement.Point(p))];
        }
    }
}
