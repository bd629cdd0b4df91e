namespace IfcCourser.Output.Sheets;

/// <summary>A block at a place, neither scaled nor turned.</summary>
/// <param name="Values">One for each attribute of the definition, in its order.</param>
public sealed record BlockItem(Pen Pen, BlockDefinition Definition, Point At, ImmutableArray<string> Values) : SheetItem(Pen)
{
    /// <summary>Values that are drawn, each where its attribute stands in the block.</summary>
    public IEnumerable<TextItem> ShownTexts() => Definition.Attributes.Zip(Values)
        .Where(pair => pair.First.Display == AttributeDisplay.Shown && pair.Second.Length > 0)
        .Select(pair => new TextItem(pair.First.Pen, pair.First.At, pair.Second, pair.First.Height, pair.First.Anchor));

    public override SheetItem MovedBy(Point by) => this with { At = At + by };
}
