namespace IfcCourser.Output.Sheets;

/// <summary>The upright box around an item.</summary>
public static class ItemBox
{
    /// <summary>In the item's own millimetres; the room of its text included.</summary>
    /// <param name="item">In millimetres of a view or of the paper.</param>
    /// <param name="perPaper">Its millimetres in one paper millimetre.</param>
    public static Box Of(SheetItem item, double perPaper) => item switch
    {
        LineItem line => Box.Around([line.From, line.To]),
        PolylineItem path => Box.Around(path.Points),
        ArcItem arc => Box.At(arc.Centre, 2 * arc.Radius, 2 * arc.Radius),
        TextItem text => TextMetrics.BoxOf(text with { At = text.At * (1 / perPaper) }).Scaled(perPaper),
        HatchItem hatch => Box.Around(hatch.Loops.SelectMany(loop => loop)),
        DimensionItem dimension => Around(DimensionPicture.Draw(dimension, perPaper), perPaper),
        BlockItem block => Around(block.Definition.Items, perPaper).Moved(block.At),
        _ => throw new NotSupportedException(item.GetType().Name),
    };

    private static Box Around(IEnumerable<SheetItem> items, double perPaper) =>
        items.Select(item => Of(item, perPaper)).Aggregate((a, b) => a.With(b));
}
