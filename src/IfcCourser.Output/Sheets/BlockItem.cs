namespace IfcCourser.Output.Sheets;

/// <summary>A block at a place, neither scaled nor turned.</summary>
/// <param name="Values">One for each attribute of the definition, in its order.</param>
public sealed record BlockItem(Pen Pen, BlockDefinition Definition, Point At, ImmutableArray<string> Values) : SheetItem(Pen)
{
    public override SheetItem MovedBy(Point by) => this with { At = At + by };
}
