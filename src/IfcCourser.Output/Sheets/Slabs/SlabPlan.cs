using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Slabs;

namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>What both sheets of a slab share: blocks of the first course, highs and lows under them, walls' numbers.</summary>
internal static class SlabPlan
{
    /// <summary>Larger scales make sheets that nobody can hold on a slab. Common practice, no source.</summary>
    public const int LargestScale = 48;

    public static void Blocks(Canvas canvas, SlabFacts facts)
    {
        foreach (var loop in facts.Survey.Beds.Select(bed => facts.Loop(bed.Block)))
        {
            Block(canvas, loop);
        }
    }

    public static void Block(Canvas canvas, Point[] loop)
    {
        canvas.Add(new PolylineItem(Pen.WholeBlock, [.. loop], PathEnd.Closed));
        for (var i = 0; i < loop.Length; i++)
        {
            canvas.TakeLine(new LineItem(Pen.WholeBlock, loop[i], loop[(i + 1) % loop.Length]));
        }
    }

    /// <summary>What must come off is hatched as what is sawn, what must be filled as what carries.</summary>
    /// <param name="free">Where figures stand that the hatch leaves free, real millimetres of the plan.</param>
    public static void HighsAndLows(Canvas canvas, SlabFacts facts, IReadOnlyCollection<Box> free)
    {
        var (field, raised) = (facts.Survey.Field, facts.Survey.Chosen.Raised);
        foreach (var facet in field.Blocks.SelectMany(block => block.OverReadings))
        {
            Hatch(canvas, facts, facet.Below(field.Limits.Min.Mm - raised), free, Pen.CutHatch, HatchKind.Cut);
            Hatch(canvas, facts, facet.Above(field.Limits.Max.Mm - raised), free, Pen.LintelHatch, HatchKind.Carries);
        }
    }

    /// <summary>Beside a face of each wall, for its middle belongs to the figures of its blocks.</summary>
    public static void WallNumbers(Canvas canvas, SlabAxes axes, IEnumerable<WallLayout> walls)
    {
        foreach (var wall in walls.Distinct())
        {
            PlanTag.Place(canvas, axes.At(wall.Frame.PointAt(wall.Frame.Length / 2, wall.Frame.Thickness, default).Plan), axes.WallNumber(wall), Pen.Heading);
        }
    }

    private static void Hatch(Canvas canvas, SlabFacts facts, Facet part, IReadOnlyCollection<Box> free, Pen hatch, HatchKind kind)
    {
        var shown = new Facet([.. part.Corners.Select(corner => corner with { Plan = Vector(facts.AtSurface(corner.Plan)) })]);
        foreach (var rest in free.Aggregate(Enumerable.Repeat(shown, 1), (parts, box) => parts.SelectMany(known => Outside(known, box))).Where(rest => !rest.IsEmpty))
        {
            canvas.Add(new HatchItem(hatch, [[.. rest.Corners.Select(corner => new Point(corner.Plan.X, corner.Plan.Y))]], kind));
        }
    }

    /// <summary>A convex part without a box, in convex parts.</summary>
    private static IEnumerable<Facet> Outside(Facet part, Box box)
    {
        if (part.IsEmpty || !Box.Around(part.Corners.Select(corner => new Point(corner.Plan.X, corner.Plan.Y))).Overlaps(box))
        {
            yield return part;
            yield break;
        }

        var corners = box.Corners();
        for (var i = 0; i < corners.Length; i++)
        {
            var (from, to) = (Vector(corners[i]), Vector(corners[(i + 1) % corners.Length]));
            yield return part.LeftOf(to, from);
            part = part.LeftOf(from, to);
        }
    }

    private static Vector2 Vector(Point point) => new(point.X, point.Y);
}
