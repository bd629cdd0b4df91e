using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>A word beside a point of a plan: as near as there is room, with a leader where it had to step aside.</summary>
internal static class PlanTag
{
    private const double TextHeight = 2.5;

    /// <summary>Distances that are tried, paper millimetres, and from which on a leader is drawn.</summary>
    private static readonly double[] _distances = [2.6, 3.4, 4.4, 5.6, 7, 9, 11, 14, 17, 21, 26, 32, 40];
    private const double Leader = 3.5;

    /// <summary>As far as a leader can be followed in a small plan, paper millimetres.</summary>
    private const double Near = 9;

    /// <summary>Between a number and what stands beside it, paper millimetres, so that two numbers don't read as one.</summary>
    private const double Clear = 1.2;

    /// <summary>Free of texts and lines if it can be, else of texts; its leader through no other text if it can be.</summary>
    public static void Place(Canvas canvas, Point at, string text, Pen pen)
    {
        (double Distance, TextItem Item)? led = null, free = null;
        foreach (var candidate in Candidates(canvas, at, text, pen).Where(c => canvas.IsFreeOfText(Around(canvas, c.Item))))
        {
            free ??= candidate;
            if (!IsLed(canvas, at, candidate))
            {
                continue;
            }

            led ??= candidate;
            if (canvas.IsFree(Around(canvas, candidate.Item)))
            {
                Write(canvas, at, candidate);
                return;
            }
        }

        Write(canvas, at, led ?? free ?? Outside(canvas, at, text, pen));
    }

    /// <summary>Free of texts and lines; false, and nothing written, where there is no such place near by.</summary>
    public static bool TryPlace(Canvas canvas, Point at, string text, Pen pen)
    {
        var chosen = Array.Find(Candidates(canvas, at, text, pen), c => c.Distance <= Near && canvas.IsFree(Around(canvas, c.Item)) && IsLed(canvas, at, c));
        if (chosen.Item is null)
        {
            return false;
        }

        Write(canvas, at, chosen);
        return true;
    }

    private static (double Distance, TextItem Item)[] Candidates(Canvas canvas, Point at, string text, Pen pen)
    {
        var width = TextMetrics.Width(text, TextHeight) / 2;
        return [.. _distances.SelectMany(distance => Ways(distance, width).Select(way => (distance, new TextItem(pen, at + (way * canvas.PerPaper), text, TextHeight, TextAnchor.Middle))))];
    }

    private static Box Around(Canvas canvas, TextItem item) => ItemBox.Of(item, canvas.PerPaper).Grown(Clear * canvas.PerPaper);

    private static bool IsLed(Canvas canvas, Point at, (double Distance, TextItem Item) chosen) =>
        chosen.Distance <= Leader || canvas.IsFreeOfText(at, ItemBox.Of(chosen.Item, canvas.PerPaper).Nearest(at));

    private static void Write(Canvas canvas, Point at, (double Distance, TextItem Item) chosen)
    {
        if (chosen.Distance > Leader)
        {
            canvas.AddLeader(new LineItem(Pen.Dimension, at, ItemBox.Of(chosen.Item, canvas.PerPaper).Nearest(at)));
        }

        canvas.Write(chosen.Item);
    }

    /// <summary>Under everything else, where there is no room near by.</summary>
    private static (double Distance, TextItem Item) Outside(Canvas canvas, Point at, string text, Pen pen) =>
        (double.MaxValue, new TextItem(pen, new Point(at.X, canvas.Extent.Bottom - (TextHeight * canvas.PerPaper)), text, TextHeight, TextAnchor.Middle));

    /// <summary>Sixteen ways, those along the axes first; sideways the text's own width is added.</summary>
    private static IEnumerable<Point> Ways(double distance, double width)
    {
        foreach (var step in (int[])[2, 14, 6, 10, 4, 12, 0, 8, 1, 15, 3, 13, 5, 11, 7, 9])
        {
            var (sin, cos) = Math.SinCos(step * Math.PI / 8);
            yield return new Point((distance * cos) + (width * Math.Sign(Math.Round(cos, 6)) * Math.Min(1, Math.Abs(cos) * 1.2)), distance * sin);
        }
    }
}
