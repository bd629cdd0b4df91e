using System.Collections.Immutable;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Tests.Support;

/// <summary>
/// Strokes that run through texts, measured on what every writer paints: views placed, blocks opened, dimensions and hatches drawn out. No writer masks a stroke under a text, so what
/// crosses here crosses on paper. Letters take the room between base line and capitals' height, and what hangs below where one hangs; a stroke is its middle line.
/// </summary>
internal static class TextCrossings
{
    /// <summary>Letters and signs of DejaVu Sans that reach below the base line by more than a tenth of the capitals' height.</summary>
    private const string Hanging = "gjpqyQ,;()[]{}|/\\_@$";

    /// <summary>A chord of an arc is nearer to it than this, paper millimetres.</summary>
    private const double ArcTolerance = 0.01;

    /// <summary>One line for each text and pen that crosses it.</summary>
    public static IEnumerable<string> Of(string number, Sheet sheet)
    {
        var items = Lowering.Lower(sheet).Where(item => sheet.Pens[item.Pen].IsPrinted).ToArray();
        var texts = items.OfType<TextItem>().Select(text => (Text: text, Ink: Ink(text))).OrderBy(one => one.Ink.Left).ToArray();
        var widest = texts.Select(one => one.Ink.Width).DefaultIfEmpty().Max();
        var lefts = texts.Select(one => one.Ink.Left).ToArray();
        return items.SelectMany(item => Strokes(item).SelectMany(stroke => Under(stroke.From, stroke.To).Select(text => FormattableString.Invariant(
                $"{number}: {item.Pen} through \"{text.Text}\" at {text.At.X:0.0}, {text.At.Y:0.0}")))).Distinct(StringComparer.Ordinal);

        IEnumerable<TextItem> Under(Point from, Point to)
        {
            var box = Box.Around([from, to]);
            var first = Array.BinarySearch(lefts, box.Left - widest);
            return texts.Skip(first < 0 ? ~first : first).TakeWhile(one => one.Ink.Left <= box.Right).Where(one => one.Ink.On(from, to) is not null).Select(one => one.Text);
        }
    }

    private static Box Ink(TextItem text)
    {
        var box = TextMetrics.BoxOf(text);
        var descent = text.Text.IndexOfAny([.. Hanging]) >= 0 ? 0 : TextMetrics.Descent * text.Height;
        return text.Degrees == 0 ? box with { Bottom = box.Bottom + descent } : box with { Right = box.Right - descent };
    }

    private static IEnumerable<(Point From, Point To)> Strokes(SheetItem item) => item switch
    {
        LineItem line => [(line.From, line.To)],
        PolylineItem path => Sides(path.Points, path.End == PathEnd.Closed),
        HatchItem face => Rows(face),
        ArcItem arc => Sides(Chords(arc), false),
        _ => [],
    };

    /// <summary>A filled face (even-odd rule) as level strokes so close that none of the letters lies between two.</summary>
    private static IEnumerable<(Point From, Point To)> Rows(HatchItem face)
    {
        const double Apart = 0.2;
        const double Touching = 1e-6;
        var box = Box.Around(face.Loops.SelectMany(loop => loop));
        for (var y = box.Bottom + (Apart / 3); y < box.Top; y += Apart)
        {
            var crossings = face.Loops.SelectMany(loop => Sides(loop, true)).Where(side => (side.From.Y <= y) != (side.To.Y <= y))
                .Select(side => side.From.X + ((y - side.From.Y) / (side.To.Y - side.From.Y) * (side.To.X - side.From.X))).Order().ToArray();
            for (var i = 0; i + 1 < crossings.Length; i += 2)
            {
                if (crossings[i + 1] - crossings[i] > Touching)
                {
                    yield return (new Point(crossings[i], y), new Point(crossings[i + 1], y));
                }
            }
        }
    }

    private static ImmutableArray<Point> Chords(ArcItem arc)
    {
        var step = 2 * Math.Acos(1 - Math.Min(1, ArcTolerance / arc.Radius)) * 180 / Math.PI;
        var count = (int)Math.Ceiling((arc.EndDegrees - arc.StartDegrees) / step) + 1;
        return [.. Enumerable.Range(0, count + 1).Select(i => arc.PointAt(arc.StartDegrees + ((arc.EndDegrees - arc.StartDegrees) * i / count)))];
    }

    private static IEnumerable<(Point From, Point To)> Sides(ImmutableArray<Point> points, bool isClosed) =>
        Enumerable.Range(0, points.Length - (isClosed ? 0 : 1)).Select(i => (points[i], points[(i + 1) % points.Length]));
}
