namespace IfcCourser.Output.Sheets;

/// <summary>A straight line.</summary>
public sealed record LineItem(Pen Pen, Point From, Point To) : SheetItem(Pen)
{
    public override SheetItem MovedBy(Point by) => this with { From = From + by, To = To + by };
}
