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
    public static void HighsAndLows(Canvas canvas, SlabFacts facts)
    {
        var (field, raised) = (facts.Survey.Field, facts.Survey.Chosen.Raised);
        foreach (var facet in field.Blocks.SelectMany(block => block.OverReadings))
        {
            Hatch(canvas, facts, facet.Below(field.Limits.Min.Mm - raised), Pen.CutHatch, HatchKind.Cut);
            Hatch(canvas, facts, facet.Above(field.Limits.Max.Mm - raised), Pen.LintelHatch, HatchKind.Carries);
        }
    }

    public static void WallNumbers(Canvas canvas, SlabFacts facts)
    {
        foreach (var wall in facts.Survey.Beds.Select(bed => bed.Block.Wall).Distinct())
        {
            PlanTag.Place(canvas, facts.At(wall.Frame.PointAt(wall.Frame.Length / 2, wall.Frame.Thickness / 2, default).Plan), facts.WallNumber(wall), Pen.Heading);
        }
    }

    private static void Hatch(Canvas canvas, SlabFacts facts, Facet part, Pen hatch, HatchKind kind)
    {
        if (!part.IsEmpty)
        {
            canvas.Add(new HatchItem(hatch, [[.. part.Corners.Select(corner => facts.AtSurface(corner.Plan))]], kind));
        }
    }
}
