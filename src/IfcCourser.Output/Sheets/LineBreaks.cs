using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using IfcCourser.Output.Sheets.Details;

namespace IfcCourser.Output.Sheets;

/// <summary>
/// Breaks what is drawn where a text stands on it: lines stop short of the letters, faces leave them a hole (ISO 129-1: no line crosses a value). Breaking beats masks, for a mask hides
/// only what a reader happens to paint before it.
/// </summary>
internal static class LineBreaks
{
    /// <summary>A stroke whose middle is nearer to the letters than this runs into them, paper millimetres: half of a joint's width.</summary>
    private const double Near = 0.1;

    /// <summary>Between the letters and where a line stops, paper millimetres.</summary>
    private const double Clear = 0.4;

    /// <summary>What is left of a line is not drawn where it is shorter, paper millimetres.</summary>
    private const double Least = 0.1;

    /// <summary>The items in their order, none crossed by its own text.</summary>
    /// <param name="items">In the view's millimetres.</param>
    /// <param name="perPaper">Its millimetres in one paper millimetre.</param>
    public static ImmutableArray<SheetItem> Around(IReadOnlyList<SheetItem> items, double perPaper)
    {
        var texts = items.SelectMany(TextsOf).Select(text => TextMetrics.InkOf(text with { At = text.At * (1 / perPaper) }).Scaled(perPaper))
            .OrderBy(ink => ink.Left).ToArray();
        var lefts = texts.Select(ink => ink.Left).ToArray();
        var widest = texts.Select(ink => ink.Width).DefaultIfEmpty().Max();
        return [.. items.SelectMany(item => Broken(item, TextsIn(ItemBox.Of(item, perPaper).Grown(perPaper)), perPaper))];

        ImmutableArray<Box> TextsIn(Box room)
        {
            var first = Array.BinarySearch(lefts, room.Left - widest);
            return [.. texts.Skip(first < 0 ? ~first : first).TakeWhile(ink => ink.Left < room.Right).Where(room.Overlaps)];
        }
    }

    /// <summary>What is left of a line beside the letters.</summary>
    /// <param name="letters">In the line's own millimetres.</param>
    /// <param name="perPaper">Its millimetres in one paper millimetre.</param>
    public static IEnumerable<LineItem> Broken(LineItem line, ImmutableArray<Box> letters, double perPaper)
    {
        var gaps = letters.Where(ink => ink.Grown(Near * perPaper).On(line.From, line.To) is not null)
            .Select(ink => ink.Grown(Clear * perPaper).On(line.From, line.To)).OfType<(double From, double To)>().ToArray();
        if (gaps.Length == 0)
        {
            return [line];
        }

        var way = line.To - line.From;
        return Left(gaps, 0, 1).Select(part => line with { From = line.From + (way * part.From), To = line.From + (way * part.To) })
            .Where(part => Math.Sqrt(Square(part.To - part.From)) > Least * perPaper);
    }

    private static IEnumerable<SheetItem> Broken(SheetItem item, ImmutableArray<Box> letters, double perPaper) => letters.IsEmpty ? [item] : item switch
    {
        LineItem line => Broken(line, letters, perPaper),
        PolylineItem path => Broken(path, letters, perPaper),
        ArcItem arc => Broken(arc, letters, perPaper),
        HatchItem hatch => Holes(hatch, letters, perPaper) is [_, ..] holes ? [hatch with { Loops = [.. hatch.Loops, .. holes] }] : [hatch],
        DimensionItem dimension => [dimension with { Breaks = letters }],
        BlockItem block => [Broken(block, letters, perPaper)],
        _ => [item],
    };

    /// <summary>A path that no letter stands on stays one; else what is left of its sides, those that hang together in one path.</summary>
    private static IEnumerable<SheetItem> Broken(PolylineItem path, ImmutableArray<Box> letters, double perPaper)
    {
        var points = path.End == PathEnd.Closed ? path.Points.Add(path.Points[0]) : path.Points;
        var sides = points.Skip(1).Select((to, i) => new LineItem(path.Pen, points[i], to)).ToArray();
        var left = sides.SelectMany(side => Broken(side, letters, perPaper)).ToArray();
        if (left.SequenceEqual(sides))
        {
            return [path];
        }

        var runs = new List<List<Point>>();
        foreach (var side in left)
        {
            if (runs.Count > 0 && runs[^1][^1] == side.From)
            {
                runs[^1].Add(side.To);
            }
            else
            {
                runs.Add([side.From, side.To]);
            }
        }

        if (runs.Count > 1 && path.End == PathEnd.Closed && runs[^1][^1] == runs[0][0])
        {
            runs[0] = [.. runs[^1], .. runs[0].Skip(1)];
            runs.RemoveAt(runs.Count - 1);
        }

        return runs.Select(run => new PolylineItem(path.Pen, [.. run], PathEnd.Open));
    }

    private static IEnumerable<SheetItem> Broken(ArcItem arc, ImmutableArray<Box> letters, double perPaper)
    {
        var crossed = letters.Where(ink => Inside(arc, ink.Grown(Near * perPaper)).Any()).ToArray();
        if (crossed.Length == 0)
        {
            return [arc];
        }

        var gaps = crossed.SelectMany(ink => Inside(arc, ink.Grown(Clear * perPaper)));
        return Left(gaps, arc.StartDegrees, arc.EndDegrees).Select(part => arc with { StartDegrees = part.From, EndDegrees = part.To });
    }

    /// <summary>The stretches of an arc in a box, degrees: it enters and leaves where its circle crosses the sides.</summary>
    private static IEnumerable<(double From, double To)> Inside(ArcItem arc, Box box)
    {
        const double Turn = 360;
        var upright = new[] { box.Left, box.Right }.Select(x => (x - arc.Centre.X) / arc.Radius).Where(cos => Math.Abs(cos) < 1).Select(Math.Acos).SelectMany(angle => new[] { angle, -angle });
        var level = new[] { box.Bottom, box.Top }.Select(y => (y - arc.Centre.Y) / arc.Radius).Where(sin => Math.Abs(sin) < 1).Select(Math.Asin).SelectMany(angle => new[] { angle, Math.PI - angle });
        var angles = upright.Concat(level).Select(angle => angle * 180 / Math.PI).Select(angle => angle + (Turn * Math.Ceiling((arc.StartDegrees - angle) / Turn)))
            .Where(angle => angle < arc.EndDegrees).Append(arc.StartDegrees).Append(arc.EndDegrees).Order().ToArray();
        return angles.Zip(angles.Skip(1)).Where(part => part.First < part.Second && arc.PointAt((part.First + part.Second) / 2) is var middle && box.Nearest(middle) == middle);
    }

    /// <summary>Around letters on the face; those that stand close together in one hole, for a hole in a hole would be filled.</summary>
    private static ImmutableArray<ImmutableArray<Point>> Holes(HatchItem hatch, ImmutableArray<Box> letters, double perPaper)
    {
        var holes = letters.Select(ink => ink.Grown(Clear * perPaper)).Where(hole => !hatch.Loops.Skip(1).Any(loop => Polygon.Contains(loop, hole))).ToList();
        for (var i = 0; i < holes.Count; i++)
        {
            while (holes.FindIndex(i + 1, holes[i].Overlaps) is > 0 and var next)
            {
                holes[i] = holes[i].With(holes[next]);
                holes.RemoveAt(next);
                i = 0;
            }
        }

        return [.. holes.Select(hole => Clip.Face(hatch.Loops[0], hole)).Where(hole => hole.Length > 2)];
    }

    /// <summary>A definition of its own, named by a sum over its gaps, for equal names mean equal content; names of blocks end at 255 letters in DXF (from memory).</summary>
    private static BlockItem Broken(BlockItem block, ImmutableArray<Box> letters, double perPaper)
    {
        var inside = letters.Select(ink => Whole(ink.Moved(block.At * -1))).ToImmutableArray();
        var items = block.Definition.Items.SelectMany(item => Broken(item, inside, perPaper)).ToImmutableArray();
        return items.SequenceEqual(block.Definition.Items)
            ? block
            : block with { Definition = block.Definition with { Name = block.Definition.Name + "-GAP_" + Sum(inside), Items = items } };

        static string Sum(IEnumerable<Box> gaps) => Convert.ToHexString(SHA256.HashData(Encoding.ASCII.GetBytes(string.Concat(gaps.Select(Text)))).AsSpan(0, 8));

        static string Text(Box gap) => string.Create(CultureInfo.InvariantCulture, $"{gap.Left * 1000:0}_{gap.Bottom * 1000:0}_{gap.Right * 1000:0}_{gap.Top * 1000:0} ");
    }

    /// <summary>In whole micrometres.</summary>
    private static Box Whole(Box box) => new(Math.Round(box.Left, 3), Math.Round(box.Bottom, 3), Math.Round(box.Right, 3), Math.Round(box.Top, 3));

    private static IEnumerable<TextItem> TextsOf(SheetItem item) => item switch
    {
        TextItem text => [text],
        DimensionItem dimension => [DimensionPicture.TextOf(dimension)],
        BlockItem block => block.ShownTexts().Concat(block.Definition.Items.SelectMany(TextsOf)).Select(text => text with { At = text.At + block.At }),
        _ => [],
    };

    /// <summary>What gaps leave of a stretch.</summary>
    private static IEnumerable<(double From, double To)> Left(IEnumerable<(double From, double To)> gaps, double from, double to)
    {
        foreach (var gap in gaps.OrderBy(gap => gap.From))
        {
            if (gap.From > from)
            {
                yield return (from, gap.From);
            }

            from = Math.Max(from, gap.To);
        }

        if (from < to)
        {
            yield return (from, to);
        }
    }

    private static double Square(Point p) => (p.X * p.X) + (p.Y * p.Y);
}
