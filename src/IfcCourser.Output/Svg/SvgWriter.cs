using System.Globalization;
using System.Security;
using System.Text;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Svg;

/// <summary>Writes a sheet as SVG 1.1, one user unit a paper millimetre; a class for each layer, so that a page may restyle it.</summary>
public static class SvgWriter
{
    /// <summary>Height of capitals as a share of the font size, of the sans serif faces named in the style.</summary>
    private const double CapitalHeight = 0.716;

    public static void Write(Sheet sheet, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        writer.NewLine = "\n";
        var (width, height) = (Number(sheet.Paper.Width), Number(sheet.Paper.Height));
        writer.WriteLine(
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" role=\"img\">");
        writer.WriteLine($"<title>{Escaped(sheet.Name)}</title>");
        WriteStyles(writer, sheet.Pens);
        writer.WriteLine($"<rect width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>");
        foreach (var item in Lowering.Lower(sheet).Where(item => sheet.Pens[item.Pen].IsPrinted))
        {
            writer.WriteLine(Element(item, sheet.Paper.Height));
        }

        writer.WriteLine("</svg>");
    }

    private static void WriteStyles(StreamWriter writer, PenTable pens)
    {
        writer.WriteLine("<style>");
        writer.WriteLine("line,path,circle{fill:none;stroke-linecap:butt;stroke-linejoin:miter}");
        writer.WriteLine("text{font-family:Arial,'Liberation Sans','DejaVu Sans',sans-serif;stroke:none}");
        foreach (var style in pens.Styles)
        {
            var grey = Grey(style.Grey);
            var dashes = LineTypes.Pattern(style.Line);
            var pattern = dashes.IsEmpty ? string.Empty : $";stroke-dasharray:{string.Join(' ', dashes.Select(dash => Number(Math.Max(Math.Abs(dash), 0.2))))}";
            writer.WriteLine($".p{(int)style.Pen}{{stroke:{grey};stroke-width:{Number(style.Width / 100.0)}{pattern}}}");
            writer.WriteLine($"text.p{(int)style.Pen},.f{(int)style.Pen}{{fill:{grey};stroke:none}}");
        }

        writer.WriteLine("</style>");
    }

    private static string Element(SheetItem item, double height)
    {
        var pen = (int)item.Pen;
        return item switch
        {
            LineItem line => $"<line class=\"p{pen}\" x1=\"{X(line.From)}\" y1=\"{Y(line.From)}\" x2=\"{X(line.To)}\" y2=\"{Y(line.To)}\"/>",
            PolylineItem path => $"<path class=\"p{pen}\" d=\"{Path(path.Points, height)}{(path.End == PathEnd.Closed ? "Z" : string.Empty)}\"/>",
            HatchItem face => $"<path class=\"f{pen}\" fill-rule=\"evenodd\" d=\"{string.Concat(face.Loops.Select(loop => Path(loop, height) + "Z"))}\"/>",
            ArcItem { IsCircle: true } circle => $"<circle class=\"p{pen}\" cx=\"{X(circle.Centre)}\" cy=\"{Y(circle.Centre)}\" r=\"{Number(circle.Radius)}\"/>",
            ArcItem arc => $"<path class=\"p{pen}\" d=\"{Arc(arc, height)}\"/>",
            TextItem text => Text(text, height),
            _ => throw new NotSupportedException(item.GetType().Name),
        };

        string X(Point p) => Number(p.X);

        string Y(Point p) => Number(height - p.Y);
    }

    private static string Text(TextItem text, double height)
    {
        var anchor = text.ShareBefore switch { 0 => "start", 1 => "end", _ => "middle" };
        var drop = text.IsMiddle ? $" dy=\"{Number(text.Height / 2)}\"" : string.Empty;
        var (x, y) = (Number(text.At.X), Number(height - text.At.Y));
        var turn = text.Degrees == 0 ? string.Empty : $" transform=\"rotate({Number(-text.Degrees)} {x} {y})\"";
        return $"<text class=\"p{(int)text.Pen}\" x=\"{x}\" y=\"{y}\"{drop}{turn} font-size=\"{Number(text.Height / CapitalHeight)}\" "
            + $"text-anchor=\"{anchor}\" xml:space=\"preserve\">{Escaped(text.Text)}</text>";
    }

    private static string Path(ImmutableArray<Point> points, double height) =>
        string.Concat(points.Select((p, i) => $"{(i == 0 ? 'M' : 'L')}{Number(p.X)} {Number(height - p.Y)}"));

    private static string Arc(ArcItem arc, double height)
    {
        var (from, to) = (arc.PointAt(arc.StartDegrees), arc.PointAt(arc.EndDegrees));
        var large = arc.EndDegrees - arc.StartDegrees > 180 ? 1 : 0;
        var radius = Number(arc.Radius);
        return $"M{Number(from.X)} {Number(height - from.Y)}A{radius} {radius} 0 {Number(large)} 0 {Number(to.X)} {Number(height - to.Y)}";
    }

    private static string Grey(int lightness)
    {
        var value = ((int)Math.Round(lightness * 2.55)).ToString("x2", CultureInfo.InvariantCulture);
        return $"#{value}{value}{value}";
    }

    private static string Number(double value) =>
        (Math.Round(value, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>Characters that XML 1.0 forbids are left out.</summary>
    private static string Escaped(string text) =>
        SecurityElement.Escape(string.Concat(text.Where(c => System.Xml.XmlConvert.IsXmlChar(c) || char.IsSurrogate(c))))!;
}
