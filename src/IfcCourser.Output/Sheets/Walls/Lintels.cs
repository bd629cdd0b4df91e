using IfcCourser.Catalogs;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>What carries: lintels with their bearings dimensioned inside them, so that no joint is crossed.</summary>
internal static class Lintels
{
    private const double TextHeight = 2.5;

    public static void Draw(Canvas canvas, WallFacts facts)
    {
        foreach (var lintel in facts.Wall.Lintels)
        {
            Draw(canvas, facts, lintel);
        }
    }

    private static void Draw(Canvas canvas, WallFacts facts, Lintel lintel)
    {
        var mm = canvas.PerPaper;
        var box = new Box(lintel.From.Mm, lintel.Bottom.Mm, lintel.To.Mm, lintel.Top.Mm);
        var labels = Labels(facts, lintel, box, mm);
        var bearings = Bearings(facts, lintel, mm).ToArray();
        canvas.Add(new HatchItem(Pen.LintelHatch, [box.Corners()], KindOf(lintel)));
        canvas.Add(PolylineItem.Rectangle(Pen.Lintel, box));
        canvas.AddRange(bearings);
        foreach (var label in labels)
        {
            canvas.Write(label);
        }

        canvas.Take(bearings.Length == 0 ? box : box.With(box.Moved(new Point(DimensionPicture.Stroke * mm, 0))).With(box.Moved(new Point(-DimensionPicture.Stroke * mm, 0))));
    }

    public static HatchKind KindOf(Lintel lintel) => lintel.Kind == LintelKind.Formed ? HatchKind.Formed : HatchKind.Carries;

    /// <summary>
    /// Tag and length where there is room for both between the bearings, else the tag; what must be done before a formed beam carries
    /// over as many lines as it takes, or in the table only.
    /// </summary>
    private static ImmutableArray<TextItem> Labels(WallFacts facts, Lintel lintel, Box box, double mm)
    {
        const double LinePitch = 4;
        var room = (box.Width - lintel.BearingLeft.Mm - lintel.BearingRight.Mm) / mm;
        var full = SheetText.LintelLabel(lintel, facts.Text);
        var text = TextMetrics.Width(full, TextHeight) <= room - 2 ? full : lintel.Id;
        var middle = new Point((box.Left + lintel.BearingLeft.Mm + box.Right - lintel.BearingRight.Mm) / 2, box.Middle.Y);
        var words = lintel.Kind == LintelKind.Formed
            ? TextMetrics.Wrap($"{text}  {SheetText.FormedBeam}", TextHeight, room - 2)
            : [text];
        ImmutableArray<string> lines = words.Length * LinePitch < box.Height / mm
            && words.All(line => TextMetrics.Width(line, TextHeight) <= room - 2) ? words : [Short(lintel, text, room - 2)];
        return [.. lines.Select((line, i) => new TextItem(
            Pen.Text,
            middle + new Point(0, (((lines.Length - 1) / 2.0) - i) * LinePitch * mm),
            line,
            TextHeight,
            TextAnchor.Middle))];
    }

    private static string Short(Lintel lintel, string text, double room)
    {
        var words = $"{text}  {SheetText.FormedBeamShort}";
        return lintel.Kind == LintelKind.Formed && TextMetrics.Width(words, TextHeight) <= room ? words : text;
    }

    /// <summary>Left out where the paper has no room for the numbers: the lintel table has them too.</summary>
    private static IEnumerable<DimensionItem> Bearings(WallFacts facts, Lintel lintel, double mm)
    {
        if (lintel.Bottom.Mm + (8 * mm) > lintel.Top.Mm)
        {
            yield break;
        }

        foreach (var (from, to) in new[] { (lintel.From, lintel.From + lintel.BearingLeft), (lintel.To - lintel.BearingRight, lintel.To) })
        {
            var text = facts.Text.Dimension(to - from);
            if (TextMetrics.Width(text, DimensionItem.TextHeight) > ((to - from).Mm / mm) - 0.8)
            {
                continue;
            }

            var line = lintel.Bottom.Mm + (2.6 * mm);
            yield return new DimensionItem(
                DimensionKind.Single,
                DimensionAxis.Horizontal,
                new Point(from.Mm, line),
                new Point(to.Mm, line),
                line,
                from.Mm,
                new Point((from.Mm + to.Mm) / 2, line + (2.4 * mm)),
                0,
                string.Empty,
                text);
        }
    }
}
