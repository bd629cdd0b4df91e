using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Png;

/// <summary>A sheet as a picture.</summary>
internal static class SheetPicture
{
    /// <summary>Least that a dot is long, and a line wide on the picture, in paper millimetres.</summary>
    private const double Dot = 0.2;

    private const int ArcPoints = 48;

    /// <param name="sheet">What is drawn.</param>
    /// <param name="pixelsPerMm">Of paper.</param>
    /// <param name="ink">The colour of a pen: red, green, blue.</param>
    /// <returns>A PNG file.</returns>
    public static byte[] Of(Sheet sheet, double pixelsPerMm, Func<PenStyle, (byte R, byte G, byte B)> ink)
    {
        var raster = new Raster(sheet.Paper.Width, sheet.Paper.Height, pixelsPerMm);
        foreach (var item in Lowering.Lower(sheet).Where(item => sheet.Pens[item.Pen].IsPrinted))
        {
            var style = sheet.Pens[item.Pen];
            Draw(raster, item, style, ink(style));
        }

        return PngFile.Of(raster.Pixels, raster.Width);
    }

    private static void Draw(Raster raster, SheetItem item, PenStyle style, (byte R, byte G, byte B) ink)
    {
        switch (item)
        {
            case LineItem line:
                Stroke(raster, [line.From, line.To], style, ink);
                break;
            case PolylineItem path:
                Stroke(raster, path.End == PathEnd.Closed ? [.. path.Points, path.Points[0]] : path.Points, style, ink);
                break;
            case ArcItem arc:
                Stroke(raster, [.. Enumerable.Range(0, ArcPoints + 1).Select(i => arc.PointAt(arc.StartDegrees + ((arc.EndDegrees - arc.StartDegrees) * i / ArcPoints)))], style, ink);
                break;
            case HatchItem face:
                raster.Fill(face.Loops.Select(loop => (IReadOnlyList<Point>)loop), ink);
                break;
            case TextItem text:
                Text(raster, text, ink);
                break;
            default:
                throw new NotSupportedException(item.GetType().Name);
        }
    }

    private static void Stroke(Raster raster, ImmutableArray<Point> points, PenStyle style, (byte R, byte G, byte B) ink)
    {
        var half = Math.Max(style.Width / 100.0, Dot) / 2;
        var dashes = LineTypes.Pattern(style.Line);
        for (var i = 0; i + 1 < points.Length; i++)
        {
            foreach (var (from, to) in Dashes(points[i], points[i + 1], dashes))
            {
                var way = to - from;
                var length = Math.Sqrt((way.X * way.X) + (way.Y * way.Y));
                if (length > 0)
                {
                    // Half the width further at both ends, so that corners close.
                    var along = way * (half / length);
                    var across = new Point(-along.Y, along.X);
                    var (a, b) = dashes.IsEmpty ? (from - along, to + along) : (from, to);
                    raster.Fill([[a + across, b + across, b - across, a - across]], ink);
                }
            }
        }
    }

    private static IEnumerable<(Point From, Point To)> Dashes(Point from, Point to, ImmutableArray<double> dashes)
    {
        var way = to - from;
        var length = Math.Sqrt((way.X * way.X) + (way.Y * way.Y));
        if (dashes.IsEmpty || length == 0)
        {
            yield return (from, to);
            yield break;
        }

        var at = 0.0;
        for (var i = 0; at < length; i++)
        {
            var dash = dashes[i % dashes.Length];
            var end = Math.Min(length, at + Math.Max(Math.Abs(dash), Dot));
            if (dash >= 0)
            {
                yield return (from + (way * (at / length)), from + (way * (end / length)));
            }

            at = end;
        }
    }

    private static void Text(Raster raster, TextItem text, (byte R, byte G, byte B) ink)
    {
        var (loops, width) = GlyphShapes.Of(text.Text);
        var size = text.Height / TrueTypeFont.Sans.CapitalHeight;
        var shift = new Point(-width * text.ShareBefore, text.IsMiddle ? -TrueTypeFont.Sans.CapitalHeight / 2.0 : 0);
        var (sin, cos) = Math.SinCos(text.Degrees * Math.PI / 180);
        raster.Fill(loops.Select(loop => (IReadOnlyList<Point>)[.. loop.Select(p => Placed(p + shift))]), ink);

        Point Placed(Point p) => text.At + (new Point((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos)) * size);
    }
}
