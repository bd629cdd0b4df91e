using System.Globalization;
using System.Text;
using IfcCourser.Output.Sheets;
using static IfcCourser.Output.Pdf.PdfSyntax;

namespace IfcCourser.Output.Pdf;

/// <summary>The marks of a page (ISO 32000-1, 8 and 9), in paper millimetres from the lower left corner.</summary>
internal sealed class PageContent
{
    private const double PointsPerMm = 72 / 25.4;

    private const double MostUnits = 14400;

    /// <summary>The least that a dot is long.</summary>
    private const double Dot = 0.2;

    private readonly StringBuilder _out = new();
    private readonly Sheet _sheet;
    private readonly EmbeddedFont _font;
    private Pen? _stroked;
    private int? _filled;
    private bool _isPathOpen;

    private PageContent(Sheet sheet, EmbeddedFont font)
    {
        (_sheet, _font) = (sheet, font);
        var scale = PointsPerMm / UserUnit(sheet.Paper);
        _out.Append(CultureInfo.InvariantCulture, $"{scale:0.########} 0 0 {scale:0.########} 0 0 cm 4 M\n");
    }

    public static byte[] Of(Sheet sheet, EmbeddedFont font)
    {
        var page = new PageContent(sheet, font);
        foreach (var item in Lowering.Lower(sheet).Where(item => sheet.Pens[item.Pen].IsPrinted))
        {
            page.Draw(item);
        }

        page.Stroke();
        return Encoding.ASCII.GetBytes(page._out.ToString());
    }

    /// <summary>Entries of the page's dictionary that say how large it is.</summary>
    public static string SizeOf(PaperSize paper)
    {
        var unit = UserUnit(paper);
        var box = $"/MediaBox [0 0 {Number(paper.Width * PointsPerMm / unit)} {Number(paper.Height * PointsPerMm / unit)}]";
        return unit == 1 ? box : $"{box} /UserUnit {Number(unit)}";
    }

    /// <summary>
    /// Points in a unit of the page (ISO 32000-1, table 30, UserUnit): pages of more than 14,400 units are beyond what readers must take (annex C, from memory),
    /// and rolls can be longer than those 5.08 m.
    /// </summary>
    private static int UserUnit(PaperSize paper) => (int)Math.Ceiling(Math.Max(paper.Width, paper.Height) * PointsPerMm / MostUnits);

    private void Draw(SheetItem item)
    {
        switch (item)
        {
            case LineItem line:
                Take(line.Pen);
                Path([line.From, line.To]);
                break;
            case PolylineItem path:
                Take(path.Pen);
                Path(path.Points);
                _out.Append(path.End == PathEnd.Closed ? "h\n" : string.Empty);
                break;
            case ArcItem arc:
                Take(arc.Pen);
                Arc(arc);
                break;
            case HatchItem face:
                Fill(face.Pen);
                face.Loops.ToList().ForEach(loop => Path(loop));
                _out.Append("f*\n");
                break;
            case TextItem text:
                Text(text);
                break;
            default:
                throw new NotSupportedException(item.GetType().Name);
        }
    }

    /// <summary>Lines that follow are of this pen; one path for all until the pen changes.</summary>
    private void Take(Pen pen)
    {
        if (_stroked != pen)
        {
            Stroke();
            var style = _sheet.Pens[pen];
            var dashes = LineTypes.Pattern(style.Line).Select(dash => Number(Math.Max(Math.Abs(dash), Dot)));
            _out.Append(CultureInfo.InvariantCulture, $"{Number(style.Width / 100.0)} w [{string.Join(' ', dashes)}] 0 d {Grey(style)} G\n");
            _stroked = pen;
        }

        _isPathOpen = true;
    }

    private void Stroke()
    {
        _out.Append(_isPathOpen ? "S\n" : string.Empty);
        _isPathOpen = false;
    }

    private void Fill(Pen pen)
    {
        Stroke();
        var style = _sheet.Pens[pen];
        _out.Append(_filled == style.Grey ? string.Empty : $"{Grey(style)} g\n");
        _filled = style.Grey;
    }

    private void Path(ImmutableArray<Point> points)
    {
        for (var i = 0; i < points.Length; i++)
        {
            _out.Append(At(points[i])).Append(i == 0 ? " m\n" : " l\n");
        }
    }

    /// <summary>Cubic curves of at most a quarter turn each: off the circle by less than 0.0003 of its radius.</summary>
    private void Arc(ArcItem arc)
    {
        var sweep = arc.EndDegrees - arc.StartDegrees;
        var parts = (int)Math.Ceiling(sweep / 90);
        var reach = 4.0 / 3 * Math.Tan(sweep / parts * Math.PI / 180 / 4);
        _out.Append(At(arc.PointAt(arc.StartDegrees))).Append(" m\n");
        for (var i = 0; i < parts; i++)
        {
            var (from, to) = (arc.PointAt(arc.StartDegrees + (sweep * i / parts)), arc.PointAt(arc.StartDegrees + (sweep * (i + 1) / parts)));
            var (out1, out2) = (from - arc.Centre, to - arc.Centre);
            var handle1 = from + (new Point(-out1.Y, out1.X) * reach);
            var handle2 = to - (new Point(-out2.Y, out2.X) * reach);
            _out.Append(At(handle1)).Append(' ').Append(At(handle2)).Append(' ').Append(At(to)).Append(" c\n");
        }

        _out.Append(arc.IsCircle ? "h\n" : string.Empty);
    }

    private void Text(TextItem text)
    {
        var line = _font.Set(text.Text, _sheet.Name);
        var size = text.Height / _font.CapitalHeight;
        var (sin, cos) = Math.SinCos(text.Degrees * Math.PI / 180);
        var (back, drop) = (line.Width * size * text.ShareBefore, text.IsMiddle ? text.Height / 2 : 0);
        var start = text.At + new Point((drop * sin) - (back * cos), -(drop * cos) - (back * sin));
        Fill(text.Pen);
        _out.Append(CultureInfo.InvariantCulture, $"BT /F {Number(size)} Tf {Number(cos)} {Number(sin)} {Number(-sin)} {Number(cos)} {At(start)} Tm <{line.Codes}> Tj ET\n");
    }

    private static string At(Point p) => $"{Number(p.X)} {Number(p.Y)}";

    private static string Grey(PenStyle style) => Number(style.Grey / 100.0);
}
