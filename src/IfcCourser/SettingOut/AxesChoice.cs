using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>Chooses the axes of a storey: along most of its walls, from the first grid lines or else from the outermost edges.</summary>
internal static class AxesChoice
{
    /// <param name="walls">Of the storey.</param>
    /// <param name="grid">Grid lines of the model.</param>
    /// <param name="outlines">Edges of the storey.</param>
    public static SetOutAxes Of(IReadOnlyCollection<WallLayout> walls, IEnumerable<GridLine> grid, ImmutableArray<SetOutOutline> outlines)
    {
        var along = Direction(walls);
        var lines = PlanLine.Of(grid).ToList();
        if (First(lines, along, along.Left) is { } left && First(lines, along, along) is { } bottom)
        {
            return Crossing(along, left, bottom);
        }

        var edges = PlanLine.Of(outlines).ToList();
        return Crossing(along, First(edges, along, along.Left) ?? Outermost(outlines, along.Left), First(edges, along, along) ?? Outermost(outlines, along));
    }

    /// <summary>Along the longest walls together, nearest to the model's x axis; x itself where no wall is straight.</summary>
    private static Vector2 Direction(IEnumerable<WallLayout> walls)
    {
        var groups = new List<(Vector2 Along, double Length)>();
        foreach (var wall in walls.Where(wall => wall.Frame.Curve is null).OrderByDescending(wall => wall.Frame.Length))
        {
            var along = NearestToX(wall.Frame.Direction);
            var place = groups.FindIndex(group => PlanLine.IsParallel(group.Along, along));
            if (place < 0)
            {
                groups.Add((along, wall.Frame.Length.Mm));
            }
            else
            {
                groups[place] = (groups[place].Along, groups[place].Length + wall.Frame.Length.Mm);
            }
        }

        return groups.Count == 0 ? new Vector2(1, 0) : groups.MaxBy(group => group.Length).Along;
    }

    /// <summary>By quarter turns, so that no digit is lost.</summary>
    private static Vector2 NearestToX(Vector2 direction)
    {
        while (direction.X <= 0 || direction.Y > direction.X || direction.Y <= -direction.X)
        {
            direction = direction.Left;
        }

        return direction;
    }

    /// <summary>The first line parallel to a direction: the leftmost of the upright ones, the lowest of the others.</summary>
    private static PlanLine? First(IEnumerable<PlanLine> lines, Vector2 along, Vector2 direction) => lines
        .Where(line => PlanLine.IsParallel(line.Direction, direction))
        .OrderBy(line => Math.Round(Vector2.Dot(line.From, Across(along, direction)), 1))
        .ThenByDescending(line => (line.To - line.From).Length)
        .FirstOrDefault();

    /// <summary>Through the outermost corner, where no edge is straight and parallel.</summary>
    private static PlanLine Outermost(ImmutableArray<SetOutOutline> outlines, Vector2 direction)
    {
        var along = direction.X > Math.Abs(direction.Y) ? direction : -direction.Left;
        var corner = outlines.SelectMany(outline => outline.Loop).MinBy(point => Vector2.Dot(point, Across(along, direction)));
        return new PlanLine(new ControlLine(outlines[0].Kind, string.Empty), corner, corner + direction);
    }

    /// <summary>The way in which lines of a direction are counted: to the right for upright ones, upwards for others.</summary>
    private static Vector2 Across(Vector2 along, Vector2 direction) => direction == along ? along.Left : along;

    private static SetOutAxes Crossing(Vector2 along, PlanLine left, PlanLine bottom)
    {
        var origin = (along * Vector2.Dot(left.From, along)) + (along.Left * Vector2.Dot(bottom.From, along.Left));
        return new SetOutAxes(origin, along, left.Line, bottom.Line);
    }
}
