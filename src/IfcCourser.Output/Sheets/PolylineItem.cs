namespace IfcCourser.Output.Sheets;

/// <summary>A path of straight lines.</summary>
public sealed record PolylineItem(Pen Pen, ImmutableArray<Point> Points, PathEnd End) : SheetItem(Pen)
{
    public static PolylineItem Rectangle(Pen pen, Box box) => new(pen, box.Corners(), PathEnd.Closed);

    public override SheetItem MovedBy(Point by) => this with { Points = [.. Points.Select(p => p + by)] };
}
