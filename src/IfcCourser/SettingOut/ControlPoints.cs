using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>Collects a storey's control points: crossings of grid lines, corners of walls, corners of slabs.</summary>
internal sealed class ControlPoints
{
    /// <summary>Sine of the least turn of an outline that is a corner: chords of curves turn less. Common practice, no source.</summary>
    private const double LeastTurn = 0.26;

    /// <summary>Points nearer than this, mm, are one.</summary>
    private const double Same = 1;

    /// <summary>Grid lines cross near the storey no further from it than this, mm. Common practice, no source.</summary>
    private const double Near = 5000;

    /// <summary>Diagonals of what has a shorter side, mm, tell nothing of its right angles. Common practice, no source.</summary>
    private const double LeastSide = 1000;

    private readonly SetOutAxes _axes;
    private readonly List<ControlPoint> _points = [];
    private readonly int _first;

    /// <param name="axes">Of the storey.</param>
    /// <param name="first">Number of the first point.</param>
    public ControlPoints(SetOutAxes axes, int first)
    {
        _axes = axes;
        _first = first;
    }

    public ImmutableArray<ControlPoint> All => [.. _points];

    public void AddCrossings(ImmutableArray<GridLine> grid, IReadOnlyCollection<SetOutOutline> outlines)
    {
        var box = Box3.Around(outlines.SelectMany(outline => outline.Loop.Select(p => new Vector3(p.X, p.Y, outline.Top)))).Grown(Near);
        foreach (var first in grid)
        {
            foreach (var second in grid.Where(line => line.Family > first.Family && Math.Abs(Vector2.Cross(first.Direction, line.Direction)) > LeastTurn))
            {
                var at = first.From + (first.Direction * (Vector2.Cross(second.From - first.From, second.Direction) / Vector2.Cross(first.Direction, second.Direction)));
                if (at.X > box.Min.X && at.X < box.Max.X && at.Y > box.Min.Y && at.Y < box.Max.Y)
                {
                    Add(ControlPointKind.GridCrossing, $"{first.Tag}/{second.Tag}", null, at, outlines.Min(outline => outline.Top));
                }
            }
        }
    }

    /// <param name="faces">Outer faces of walls.</param>
    /// <param name="walls">Of the storey.</param>
    public void AddWallCorners(IEnumerable<SetOutOutline> faces, IReadOnlyCollection<WallLayout> walls)
    {
        foreach (var (corner, top) in Corners(faces))
        {
            var wall = walls.MinBy(wall => wall.Wall.Footprint().Min(point => (point - corner).Length))!;
            Add(ControlPointKind.WallCorner, string.Empty, wall.Identity.GlobalId, corner, top);
        }
    }

    public void AddSlabCorners(IEnumerable<SetOutOutline> outlines)
    {
        foreach (var (corner, top) in Corners(outlines.Where(outline => outline.Kind == ControlLineKind.SlabEdge)))
        {
            Add(ControlPointKind.SlabCorner, string.Empty, null, corner, top);
        }
    }

    /// <summary>The corner at the start of a wall's left face; its number.</summary>
    public int AddSkewCorner(WallLayout wall)
    {
        var corner = wall.Frame.PointAt(wall.Wall.LeftFace.From, Length.Zero, Length.Zero);
        return _points.Find(point => point.Wall is not null && (point.Point - corner).Length < Same)?.Number
            ?? Add(ControlPointKind.SkewCorner, string.Empty, wall.Identity.GlobalId, corner.Plan, corner.Z);
    }

    /// <summary>The two diagonals between the outermost wall corners, or those of the slab where walls are too slender to be checked; none where the corners are fewer than four.</summary>
    public ImmutableArray<Diagonal> Diagonals() =>
        Diagonals(ControlPointKind.WallCorner) is [_, ..] ofWalls ? ofWalls : Diagonals(ControlPointKind.SlabCorner);

    private ImmutableArray<Diagonal> Diagonals(ControlPointKind kind)
    {
        var corners = _points.Where(point => point.Kind == kind).ToList();
        (double X, double Y)[] ways = [(-1, -1), (1, 1), (1, -1), (-1, 1)];
        var ends = corners.Count == 0 ? [] : ways.Select(way => corners.MaxBy(point => (way.X * point.X.Mm) + (way.Y * point.Y.Mm))!).ToArray();
        return ends.Distinct().Count() < ways.Length || ends[..2].Any(end => ends[2..].Any(other => (end.Point.Plan - other.Point.Plan).Length < LeastSide))
            ? []
            : [Between(ends[0], ends[1]), Between(ends[2], ends[3])];
    }

    private static Diagonal Between(ControlPoint from, ControlPoint to) =>
        new(from.Number, to.Number, Length.FromModelMm((to.Point.Plan - from.Point.Plan).Length));

    private static IEnumerable<(Vector2 Corner, double Top)> Corners(IEnumerable<SetOutOutline> outlines) => outlines.SelectMany(outline =>
        outline.Loop.Where((point, i) =>
        {
            var (before, after) = (outline.Loop[(i + outline.Loop.Length - 1) % outline.Loop.Length], outline.Loop[(i + 1) % outline.Loop.Length]);
            return Math.Abs(Vector2.Cross((point - before).Unit(), (after - point).Unit())) > LeastTurn;
        }).Select(point => (point, outline.Top)));

    private int Add(ControlPointKind kind, string tag, string? wall, Vector2 at, double height)
    {
        var (x, y) = _axes.Measured(at);
        if (_points.Find(point => point.Kind == kind && (point.Point.Plan - at).Length < Same) is { } same)
        {
            return same.Number;
        }

        _points.Add(new ControlPoint(_first + _points.Count, kind, tag, wall, new Vector3(at.X, at.Y, height), x, y));
        return _points[^1].Number;
    }
}
