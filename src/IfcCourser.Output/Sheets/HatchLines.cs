namespace IfcCourser.Output.Sheets;

/// <summary>Draws a hatch out as lines.</summary>
public static class HatchLines
{
    /// <summary>Shorter than this, as a share of the lines' distance, is no line: edges of a hole that lie on those of the face.</summary>
    private const double Least = 1e-6;

    /// <summary>Lines of a line hatch; a solid one as it is.</summary>
    /// <param name="hatch">In any millimetres; lines lie on one grid through the origin, so neighbouring faces match.</param>
    /// <param name="perPaper">Millimetres of the hatch's loops in one paper millimetre.</param>
    public static IEnumerable<SheetItem> Draw(HatchItem hatch, double perPaper) => hatch.Kind == HatchKind.Solid
        ? [hatch]
        : hatch.Degrees.SelectMany(degrees => Draw(hatch, degrees, perPaper));

    private static List<SheetItem> Draw(HatchItem hatch, double degrees, double perPaper)
    {
        var spacing = hatch.Spacing * perPaper;
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var loops = hatch.Loops.Select(loop => loop.Select(p => new Point((p.X * cos) + (p.Y * sin), (p.Y * cos) - (p.X * sin))).ToArray()).ToArray();
        var box = Box.Around(loops.SelectMany(loop => loop));
        var lines = new List<SheetItem>();
        for (var row = (long)Math.Ceiling(box.Bottom / spacing); row * spacing < box.Top; row++)
        {
            var y = row * spacing;
            var crossings = loops.SelectMany(loop => Crossings(loop, y)).Order().ToArray();
            for (var i = 0; i + 1 < crossings.Length; i += 2)
            {
                if (crossings[i + 1] - crossings[i] > Least * spacing)
                {
                    lines.Add(new LineItem(hatch.Pen, Turned(crossings[i]), Turned(crossings[i + 1])));
                }
            }

            Point Turned(double x) => new((x * cos) - (y * sin), (x * sin) + (y * cos));
        }

        return lines;
    }

    private static IEnumerable<double> Crossings(Point[] loop, double y)
    {
        for (var i = 0; i < loop.Length; i++)
        {
            var (a, b) = (loop[i], loop[(i + 1) % loop.Length]);
            if ((a.Y <= y) != (b.Y <= y))
            {
                yield return a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
            }
        }
    }
}
