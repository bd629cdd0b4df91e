using IfcCourser.Geometry;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>
/// Openings: heavy edge, inside nothing but tag and masonry size; where one moved, its designed place dashed; where one is no
/// rectangle, what is closed beside its outline hatched.
/// </summary>
internal static class Openings
{
    private const double TagHeight = 3.5;
    private const double SizeHeight = 2.5;

    public static void Draw(Canvas canvas, WallFacts facts)
    {
        foreach (var (opening, tag) in facts.Wall.Openings.Zip(facts.Tags))
        {
            var placed = BoxOf(opening.Placed);
            canvas.Add(PolylineItem.Rectangle(opening.Interrupts ? Pen.OuterEdge : Pen.BuiltIn, placed));
            if (opening.Placed != opening.Design)
            {
                Designed(canvas, BoxOf(opening.Design));
            }

            if (opening.Interrupts && opening.Outline is { } outline)
            {
                var points = outline.Select(p => new Point(p.S.Mm, p.Z.Mm)).ToImmutableArray();
                canvas.Add(new HatchItem(Pen.CutHatch, [placed.Corners(), points], HatchKind.Formed));
                canvas.Add(new PolylineItem(Pen.CutBlock, points, PathEnd.Closed));
            }

            Label(canvas, placed, tag, SheetText.Size(facts.Text, opening.Placed));
        }
    }

    public static Box BoxOf(ElevationRect rect) => new(rect.Left.Mm, rect.Bottom.Mm, rect.Right.Mm, rect.Top.Mm);

    private static void Designed(Canvas canvas, Box box)
    {
        canvas.Add(PolylineItem.Rectangle(Pen.DesignedJamb, box));
        foreach (var x in new[] { box.Left, box.Right })
        {
            canvas.TakeLine(new LineItem(Pen.DesignedJamb, new Point(x, box.Bottom), new Point(x, box.Top)));
        }
    }

    /// <summary>Tag over size, lying or, in a narrow opening, standing; the tag alone where the size does not fit.</summary>
    private static void Label(Canvas canvas, Box opening, string tag, string size)
    {
        var mm = canvas.PerPaper;
        var gap = new Point(0, 3 * mm);
        var lying = new[] { Item(opening.Middle + gap, tag, TagHeight, 0), Item(opening.Middle - gap, size, SizeHeight, 0) };
        var aside = new Point(3 * mm, 0);
        var standing = new[] { Item(opening.Middle - aside, tag, TagHeight, 90), Item(opening.Middle + aside, size, SizeHeight, 90) };
        var alone = new[] { Alone(canvas, opening, tag) };
        var chosen = new[] { lying, standing }.FirstOrDefault(texts => texts.All(text =>
            ItemBox.Of(text, mm) is var box && opening.Contains(box) && canvas.IsFree(box) && canvas.IsFreeOfJoints(box))) ?? alone;
        foreach (var text in chosen)
        {
            canvas.Write(text);
        }

        canvas.Take(opening);
    }

    /// <summary>In the opening, or beside one that is smaller than its tag: in a block where it can be.</summary>
    private static TextItem Alone(Canvas canvas, Box opening, string tag)
    {
        const int Farthest = 12;
        var mm = canvas.PerPaper;
        var inside = Item(opening.Middle, tag, SizeHeight, 0);
        var own = ItemBox.Of(inside, mm);
        if (opening.Contains(own) && canvas.IsFreeOfJoints(own))
        {
            return inside;
        }

        var (across, up) = ((opening.Width + own.Width) / 2, (opening.Height + own.Height) / 2);
        var beside = from step in Enumerable.Range(1, Farthest)
                     from way in new[] { new Point(across + (step * mm), 0), new Point(-across - (step * mm), 0), new Point(0, up + (step * mm)), new Point(0, -up - (step * mm)) }
                     select inside with { At = opening.Middle + way };
        return beside.FirstOrDefault(item => ItemBox.Of(item, mm) is var box && canvas.IsFree(box) && canvas.IsFreeOfJoints(box)) ?? inside;
    }

    private static TextItem Item(Point at, string text, double height, double degrees) =>
        new(Pen.Text, at, text, height, TextAnchor.Middle, degrees);
}
