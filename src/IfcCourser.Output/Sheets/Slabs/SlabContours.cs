using IfcCourser.Geometry;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>Lines of equal bed: where the slab lies as far below the datum.</summary>
internal static class SlabContours
{
    private const int Most = 14;
    private const double TextHeight = 2.5;

    /// <summary>Around a text, without line, paper millimetres.</summary>
    private const double Clear = 0.3;

    /// <summary>Steps between lines, mm and sixteenths.</summary>
    private static readonly double[] _metric = [1, 2, 5, 10, 20, 50];
    private static readonly double[] _inch = [25.4 / 16, 25.4 / 8, 25.4 / 4, 25.4 / 2, 25.4, 50.8];

    /// <summary>The step that gives no more than a few lines.</summary>
    public static double Step(SlabFacts facts)
    {
        var heights = facts.Survey.Readings.Levels.Select(reading => reading.Height).ToArray();
        var steps = facts.Units == UnitSystem.Inch ? _inch : _metric;
        return steps.FirstOrDefault(step => (heights.Max() - heights.Min()) / step <= Most, steps[^1]);
    }

    /// <summary>How far below the datum each line lies, on the longest straight part of it.</summary>
    public static void Label(Canvas canvas, SlabFacts facts)
    {
        var step = Step(facts);
        foreach (var lines in Lines(facts).GroupBy(line => line.Level))
        {
            var (_, from, to) = lines.MaxBy(line => Math.Abs(line.To.X - line.From.X) + Math.Abs(line.To.Y - line.From.Y));
            var label = new TextItem(Pen.Dimension, (from + to) * 0.5, facts.Thickness(lines.Key * step), TextHeight, TextAnchor.Middle);
            if (canvas.IsFreeOfText(ItemBox.Of(label, canvas.PerPaper)))
            {
                canvas.Write(label);
            }
        }
    }

    /// <summary>The lines, left out where texts stand: after all of these.</summary>
    public static void Draw(Canvas canvas, SlabFacts facts)
    {
        foreach (var (_, from, to) in Lines(facts))
        {
            var at = 0.0;
            foreach (var (first, last) in canvas.Texts.Select(text => text.Grown(Clear * canvas.PerPaper).On(from, to)).OfType<(double From, double To)>().Append((1, 1)).Order())
            {
                if (first > at)
                {
                    canvas.Add(new LineItem(Pen.Neighbour, from + ((to - from) * at), from + ((to - from) * first)));
                }

                at = Math.Max(at, last);
            }
        }
    }

    private static IEnumerable<(int Level, Point From, Point To)> Lines(SlabFacts facts)
    {
        var step = Step(facts);
        return facts.Survey.Surface.Triangles.SelectMany(triangle => Lines(triangle, facts, step)).Select(line => (line.Level, facts.AtSurface(line.From), facts.AtSurface(line.To)));
    }

    private static IEnumerable<(int Level, Vector2 From, Vector2 To)> Lines(SlabTriangle triangle, SlabFacts facts, double step)
    {
        SlabVertex[] corners = [triangle.A, triangle.B, triangle.C];
        var below = corners.Select(corner => facts.Below(corner.Value) / step).ToArray();
        for (var level = (int)Math.Ceiling(below.Min()); level <= below.Max(); level++)
        {
            var crossings = new List<Vector2>();
            for (var i = 0; i < corners.Length; i++)
            {
                var (a, b) = (below[i] - level, below[(i + 1) % corners.Length] - level);
                if ((a < 0) != (b < 0))
                {
                    crossings.Add(corners[i].Plan + ((corners[(i + 1) % corners.Length].Plan - corners[i].Plan) * (a / (a - b))));
                }
            }

            if (crossings is [var from, var to])
            {
                yield return (level, from, to);
            }
        }
    }
}
