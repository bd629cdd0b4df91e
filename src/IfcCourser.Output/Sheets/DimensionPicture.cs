namespace IfcCourser.Output.Sheets;

/// <summary>Draws a dimension out: lines, oblique strokes (ISO 129-1, building drawings) and text.</summary>
public static class DimensionPicture
{
    /// <summary>Half the extent of an oblique stroke, paper millimetres.</summary>
    public const double Stroke = 1.0;

    /// <summary>How far extension lines reach past the dimension line, paper millimetres.</summary>
    public const double Overrun = 1.0;

    /// <summary>Gap between a measured point and its extension line, paper millimetres.</summary>
    public const double Gap = 1.0;

    /// <summary>In the dimension's own millimetres, text heights in paper millimetres.</summary>
    /// <param name="dimension">In real millimetres.</param>
    /// <param name="perPaper">Real millimetres in one paper millimetre.</param>
    public static ImmutableArray<SheetItem> Draw(DimensionItem dimension, double perPaper)
    {
        var parts = ImmutableArray.CreateBuilder<LineItem>();
        parts.Add(new LineItem(Pen.Dimension, LineFrom(dimension), dimension.LineEnd));
        parts.AddRange(Stroke45(dimension.LineEnd, perPaper));
        parts.AddRange(Extension(dimension.To, dimension.LineEnd, perPaper));
        if (dimension.Kind == DimensionKind.Single)
        {
            parts.AddRange(Stroke45(dimension.LineStart, perPaper));
            parts.AddRange(Extension(dimension.From, dimension.LineStart, perPaper));
        }
        else
        {
            parts.AddRange(Leader(dimension, perPaper));
        }

        return [.. parts.SelectMany(line => LineBreaks.Broken(line, dimension.Breaks, perPaper)), TextOf(dimension)];
    }

    /// <summary>In the dimension's own millimetres, its height in paper millimetres.</summary>
    public static TextItem TextOf(DimensionItem dimension) =>
        new(Pen.Dimension, dimension.TextAt, dimension.Text, DimensionItem.TextHeight, TextAnchor.Middle, dimension.TextDegrees);

    private static Point LineFrom(DimensionItem dimension) => dimension.Axis == DimensionAxis.Horizontal
        ? new Point(dimension.LineFrom, dimension.Line)
        : new Point(dimension.Line, dimension.LineFrom);

    private static IEnumerable<LineItem> Stroke45(Point at, double perPaper)
    {
        var half = new Point(Stroke, Stroke) * perPaper;
        return [new LineItem(Pen.Dimension, at - half, at + half)];
    }

    /// <summary>None where the measured point lies on the dimension line.</summary>
    private static IEnumerable<LineItem> Extension(Point measured, Point onLine, double perPaper)
    {
        var way = onLine - measured;
        var length = Math.Abs(way.X) + Math.Abs(way.Y);
        if (length <= Gap * perPaper)
        {
            return [];
        }

        var unit = way * (1 / length);
        return [new LineItem(Pen.Dimension, measured + (unit * (Gap * perPaper)), onLine + (unit * (Overrun * perPaper)))];
    }

    /// <summary>From the station to its text where the text had to step aside.</summary>
    private static IEnumerable<LineItem> Leader(DimensionItem dimension, double perPaper)
    {
        var half = (TextMetrics.Width(dimension.Text, DimensionItem.TextHeight) / 2 + 0.5) * perPaper;
        var towards = dimension.TextAt - dimension.LineEnd;
        var (start, end) = dimension.TextDegrees != 0
            ? (new Point(0, Math.Sign(towards.Y) * Overrun * perPaper), dimension.TextAt - new Point(0, Math.Sign(towards.Y) * half))
            : (new Point(Math.Sign(towards.X) * Overrun * perPaper, 0), dimension.TextAt - new Point(Math.Sign(towards.X) * half, 0));
        return [new LineItem(Pen.Dimension, dimension.LineEnd + start, end)];
    }
}
