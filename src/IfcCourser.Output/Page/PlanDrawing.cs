using System.Globalization;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Page;

/// <summary>A storey in plan: walls as laid with their openings, each a link to its elevation. One user unit a centimetre, y down.</summary>
internal sealed class PlanDrawing
{
    /// <summary>Text is this share of the plan's width, so that it reads the same on any plan; less on those of many walls, which the page shows larger.</summary>
    private const double TextShare = 1 / 48.0;
    private const double BroadTextShare = 1 / 90.0;
    private const double MmInUnit = 10;
    private const double WidestSkipped = 600;

    private readonly Vector2 _low;
    private readonly Vector2 _high;
    private readonly double _text;

    private PlanDrawing(IReadOnlyCollection<Vector2> points, double textShare)
    {
        _low = new Vector2(points.Min(point => point.X), points.Min(point => point.Y));
        _high = new Vector2(points.Max(point => point.X), points.Max(point => point.Y));
        var size = Math.Max(_high.X - _low.X, (_high.Y - _low.Y) * 0.8);
        _text = Math.Max(size, 1000) * textShare / MmInUnit;
    }

    public static void Write(Html html, PageFacts facts, PageStorey storey)
    {
        var plan = new PlanDrawing([.. storey.Walls.SelectMany(wall => wall.Wall.Wall.Footprint())], facts.HasManyWalls ? BroadTextShare : TextShare);
        var margin = plan._text * 3;
        var (width, height) = ((plan._high.X - plan._low.X) / MmInUnit, (plan._high.Y - plan._low.Y) / MmInUnit);
        html.Line($"<svg viewBox=\"{Number(-margin)} {Number(-margin)} {Number(width + (2 * margin))} {Number(height + (2 * margin))}\" style=\"--text:{Number(plan._text)}px\" role=\"group\" aria-label=\"Plan of {storey.Name}\">");
        foreach (var skipped in facts.Skipped.Where(wall => wall.Storey == storey.Name))
        {
            plan.Skipped(html, skipped);
        }

        foreach (var wall in storey.Walls)
        {
            plan.Wall(html, wall);
        }

        plan.Axes(html, -margin, height + margin);
        html.Line($"</svg>");
    }

    private static string Number(double value) => (Math.Round(value, 1) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);

    private string At(Vector2 point) => $"{X(point)} {Y(point)}";

    private string X(Vector2 point) => Number((point.X - _low.X) / MmInUnit);

    private string Y(Vector2 point) => Number((_high.Y - point.Y) / MmInUnit);

    private string Path(IEnumerable<Vector2> points) => "M" + string.Join('L', points.Select(At)) + "Z";

    /// <summary>The box of its body, dashed, where that tells something of the wall: not of walls askew to the axes.</summary>
    private void Skipped(Html html, PageSkipped skipped)
    {
        if (skipped.Wall.Body is { } body && Math.Min(body.Max.X - body.Min.X, body.Max.Y - body.Min.Y) < WidestSkipped)
        {
            Vector2[] box = [new(body.Min.X, body.Min.Y), new(body.Max.X, body.Min.Y), new(body.Max.X, body.Max.Y), new(body.Min.X, body.Max.Y)];
            html.Line($"<a href=\"#s{skipped.Number}\" aria-label=\"{skipped.Mark} {skipped.Wall.Identity.Label}, not laid out\"><path class=\"gone\" d=\"{Path(box)}\"><title>{skipped.Mark} {skipped.Wall.Identity.Label}, not laid out: {skipped.Wall.Reason.Code.Id}</title></path></a>");
        }
    }

    private void Wall(Html html, PageWall wall)
    {
        // Begins with what is written on the plan.
        var name = $"{wall.Number}, {wall.Mark} {wall.Name}";
        html.Line($"<a href=\"#w{wall.Number}\" class=\"wall\" aria-label=\"{name}\"><title>{name}</title><path class=\"body\" d=\"{Path(wall.Wall.Wall.Footprint())}\"/>");
        foreach (var opening in wall.Openings.Where(opening => opening.Opening.Interrupts))
        {
            Opening(html, wall.Wall.Frame, opening);
        }

        Label(html, wall);
        html.Line($"</a>");
        foreach (var opening in wall.Openings.Where(opening => opening.State is OpeningState.Moved or OpeningState.Off))
        {
            Mark(html, opening);
        }
    }

    /// <summary>A gap; across it the lines of a window, or a door's threshold.</summary>
    private void Opening(Html html, WallFrame frame, PageOpening opening)
    {
        var (left, right) = (opening.Opening.Placed.Left, opening.Opening.Placed.Right);
        Vector2 Point(Length s, Length t) => frame.PointAt(s, t, Length.Zero).Plan;
        var thick = frame.Thickness;
        html.Line($"<path class=\"gap\" d=\"{Path([Point(left, Length.Zero), Point(right, Length.Zero), Point(right, thick), Point(left, thick)])}\"/>");
        if (opening.Opening.Opening.Kind == OpeningKind.Window)
        {
            html.Line($"<path class=\"glass\" d=\"M{At(Point(left, thick / 2))}L{At(Point(right, thick / 2))}\"/>");
        }
    }

    /// <summary>Outside the right face, where the elevation is seen from; left out where the wall is shorter than its number.</summary>
    private void Label(Html html, PageWall wall)
    {
        var frame = wall.Wall.Frame;
        if (frame.Length.Mm < _text * MmInUnit * 3)
        {
            return;
        }

        var middle = frame.PointAt(frame.Length / 2, frame.Thickness, Length.Zero).Plan;
        var next = frame.PointAt((frame.Length / 2) + Length.FromMm(1), frame.Thickness, Length.Zero).Plan;
        var along = (next - middle).Unit();
        var place = middle - (along.Left * (_text * MmInUnit * 0.8));
        html.Line($"<text aria-hidden=\"true\" x=\"{X(place)}\" y=\"{Y(place)}\">{wall.Number}</text>");
    }

    /// <summary>An arrow the way the opening moved along the wall, a diamond where it did not; a link to its row.</summary>
    private void Mark(Html html, PageOpening opening)
    {
        var frame = opening.Wall.Wall.Frame;
        var way = opening.Left + opening.Right;
        var at = (opening.Opening.Placed.Left + opening.Opening.Placed.Right) / 2;
        var middle = frame.PointAt(at, frame.Thickness / 2, Length.Zero).Plan;
        var along = (frame.PointAt(at + Length.FromMm(1), frame.Thickness / 2, Length.Zero).Plan - middle).Unit() * (way < Length.Zero ? -1 : 1);
        var (unit, out1) = (_text * MmInUnit, frame.Normal);
        var centre = middle + (out1 * ((frame.Thickness.Mm / 2) + (unit * 0.9)));
        var title = $"{opening.Tag} {opening.Opening.Opening.Label}: {PageText.State(opening.State)}";
        var (tip, tail) = (centre + (along * unit), centre - (along * unit));
        var shape = way == Length.Zero
            ? Path([centre + (out1 * (unit * 0.6)), centre + (along * (unit * 0.6)), centre - (out1 * (unit * 0.6)), centre - (along * (unit * 0.6))])
            : $"M{At(tail)}L{At(tip)}M{At(tip - (along * (unit * 0.7)) + (out1 * (unit * 0.5)))}L{At(tip)}L{At(tip - (along * (unit * 0.7)) - (out1 * (unit * 0.5)))}";
        html.Line($"<a href=\"#{opening.Id}\" class=\"mark\" aria-label=\"{title}\"><path d=\"{shape}\"><title>{title}</title></path></a>");
    }

    private void Axes(Html html, double left, double bottom)
    {
        var (x, y, size) = (left + (_text * 0.6), bottom - (_text * 0.6), _text * 1.6);
        html.Line($"<g class=\"axes\" aria-hidden=\"true\"><path d=\"M{Number(x)} {Number(y - size)}V{Number(y)}H{Number(x + size)}\"/><text x=\"{Number(x + size + (_text * 0.5))}\" y=\"{Number(y)}\">X</text><text x=\"{Number(x)}\" y=\"{Number(y - size - (_text * 0.6))}\">Y</text></g>");
    }
}
