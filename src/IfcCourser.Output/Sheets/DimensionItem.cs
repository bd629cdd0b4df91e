namespace IfcCourser.Output.Sheets;

/// <summary>A dimension between two measured points.</summary>
/// <param name="From">First measured point; the origin of a running dimension.</param>
/// <param name="To">Second measured point.</param>
/// <param name="Line">Where the dimension line lies across the axis: y where horizontal, x where vertical.</param>
/// <param name="LineFrom">Where along the axis the drawn part of the line begins: at the last station before this one for running dimensions.</param>
/// <param name="TextAt">Middle of the text.</param>
/// <param name="TextDegrees">0 or 90.</param>
/// <param name="Prefix">Printed before the measurement, such as a bar's tag; may be empty.</param>
/// <param name="Text">All that is printed, prefix and measurement, in the set's units.</param>
public sealed record DimensionItem(
    DimensionKind Kind,
    DimensionAxis Axis,
    Point From,
    Point To,
    double Line,
    double LineFrom,
    Point TextAt,
    double TextDegrees,
    string Prefix,
    string Text) : SheetItem(Pen.Dimension)
{
    /// <summary>Height of the text in paper millimetres: the least legible one of ISO 3098.</summary>
    public const double TextHeight = 2.5;

    /// <summary>Letters, its own among them, at which its lines are broken; real millimetres.</summary>
    public ImmutableArray<Box> Breaks { get; init; } = [];

    /// <summary>What is measured, in real millimetres.</summary>
    public double Measured => Axis == DimensionAxis.Horizontal ? Math.Abs(To.X - From.X) : Math.Abs(To.Y - From.Y);

    /// <summary>Where the second extension line meets the dimension line.</summary>
    public Point LineEnd => Axis == DimensionAxis.Horizontal ? new Point(To.X, Line) : new Point(Line, To.Y);

    /// <summary>Where the first extension line meets the dimension line.</summary>
    public Point LineStart => Axis == DimensionAxis.Horizontal ? new Point(From.X, Line) : new Point(Line, From.Y);

    public override SheetItem MovedBy(Point by) => this with
    {
        From = From + by,
        To = To + by,
        Line = Line + (Axis == DimensionAxis.Horizontal ? by.Y : by.X),
        LineFrom = LineFrom + (Axis == DimensionAxis.Horizontal ? by.X : by.Y),
        TextAt = TextAt + by,
        Breaks = [.. Breaks.Select(letters => letters.Moved(by))],
    };
}
