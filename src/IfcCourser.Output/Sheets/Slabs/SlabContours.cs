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

    public static void Draw(Canvas canvas, SlabFacts facts)
    {
        var step = Step(facts);
        foreach (var lines in facts.Survey.Surface.Triangles.SelectMany(triangle => Lines(triangle, facts, step)).GroupBy(line => line.Level))
        {
            var drawn = lines.Select(line => new LineItem(Pen.Neighbour, facts.AtSurface(line.From), facts.AtSurface(line.To))).ToArray();
            canvas.AddRange(drawn);
            var longest = drawn.MaxBy(line => Math.Abs(line.To.X - line.From.X) + Math.Abs(line.To.Y - line.From.Y))!;
            var label = new TextItem(Pen.Dimension, (longest.From + longest.To) * 0.5, facts.Thickness(lines.Key * step), TextHeight, TextAnchor.Middle);
            if (canvas.IsFreeOfText(ItemBox.Of(label, canvas.PerPaper)))
            {
                canvas.Write(label);
            }
        }
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
