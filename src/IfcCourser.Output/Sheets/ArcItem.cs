namespace IfcCourser.Output.Sheets;

/// <summary>An arc, counter-clockwise between two angles in degrees from the x axis; a circle where they differ by 360.</summary>
public sealed record ArcItem(Pen Pen, Point Centre, double Radius, double StartDegrees, double EndDegrees) : SheetItem(Pen)
{
    public bool IsCircle => EndDegrees - StartDegrees >= 360;

    public static ArcItem Circle(Pen pen, Point centre, double radius) => new(pen, centre, radius, 0, 360);

    public override SheetItem MovedBy(Point by) => this with { Centre = Centre + by };

    /// <summary>A point of the arc, or of the circle it lies on.</summary>
    public Point PointAt(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return Centre + new Point(Radius * cos, Radius * sin);
    }
}
