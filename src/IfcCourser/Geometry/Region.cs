using System.Collections.Immutable;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace IfcCourser.Geometry;

/// <summary>
/// An area of a plane, mm: any number of polygons with holes. Corners lie on a grid of a micrometre, so that edges
/// that differ by rounding only are one edge (snap rounding).
/// </summary>
public sealed class Region
{
    /// <summary>Corners nearer than this, in mm, to the line between their neighbours are dropped.</summary>
    private const double Straight = 0.02;

    /// <summary>Gaps narrower than twice this, in mm, are closed: dust between items of one body.</summary>
    private const double Dust = 0.05;

    private static readonly PrecisionModel _grid = new(1000);
    private static readonly GeometryFactory _factory = new(_grid);

    private readonly Shape _shape;

    private Region(Shape shape) => _shape = shape;

    public static Region Empty { get; } = new(_factory.CreatePolygon());

    public bool IsEmpty => _shape.IsEmpty;

    /// <summary>mm2.</summary>
    public double Area => _shape.Area;

    /// <summary>The box around the region; meaningless where it is empty.</summary>
    public Rect Bounds => new(_shape.EnvelopeInternal.MinX, _shape.EnvelopeInternal.MinY, _shape.EnvelopeInternal.MaxX, _shape.EnvelopeInternal.MaxY);

    /// <summary>Its separate polygons, largest first.</summary>
    public ImmutableArray<Region> Parts =>
    [
        .. Polygons(_shape).OrderByDescending(polygon => polygon.Area).ThenBy(polygon => polygon.EnvelopeInternal.MinX).Select(polygon => new Region(polygon)),
    ];

    /// <summary>The holes of its polygons, as regions.</summary>
    public ImmutableArray<Region> Holes =>
        [.. Polygons(_shape).SelectMany(polygon => polygon.Holes).Select(hole => new Region(_factory.CreatePolygon(hole.Coordinates)))];

    /// <summary>Every edge of every loop.</summary>
    public IEnumerable<(Vector2 From, Vector2 To)> Edges => Polygons(_shape)
        .SelectMany(polygon => polygon.Holes.Prepend(polygon.ExteriorRing))
        .SelectMany(ring => ring.Coordinates.Zip(ring.Coordinates.Skip(1)))
        .Select(edge => (new Vector2(edge.First.X, edge.First.Y), new Vector2(edge.Second.X, edge.Second.Y)));

    /// <summary>The outer loop of the largest polygon, counter-clockwise from its lowest leftmost corner, straight corners dropped.</summary>
    public ImmutableArray<Vector2> Outline => IsEmpty ? [] : Loop(Polygons(_shape).MaxBy(polygon => polygon.Area)!.ExteriorRing.Coordinates);

    public static Region Of(Rect rect) =>
        rect.IsEmpty ? Empty : Of([[new(rect.Left, rect.Bottom), new(rect.Right, rect.Bottom), new(rect.Right, rect.Top), new(rect.Left, rect.Top)]]);

    /// <summary>What polygons cover together; of one that crosses itself, what its loop goes around.</summary>
    public static Region Of(IEnumerable<ImmutableArray<Vector2>> polygons)
    {
        var shapes = polygons.Select(Polygon).Where(polygon => polygon.Area > 0).ToArray();
        return shapes.Length == 0 ? Empty : new Region(Closed(UnaryUnionNG.Union((Shape)_factory.CreateGeometryCollection(shapes), _grid)));
    }

    public Region Union(Region other) => Overlay(other, SpatialFunction.Union);

    public Region Intersect(Region other) => Overlay(other, SpatialFunction.Intersection);

    public Region Subtract(Region other) => Overlay(other, SpatialFunction.Difference);

    /// <summary>The region moved, its first coordinate turned round before that where it is seen from behind.</summary>
    public Region Moved(bool isMirrored, double along, double up) =>
        IsEmpty ? this : new(OnGrid(new AffineTransformation(isMirrored ? -1 : 1, 0, along, 0, 1, up).Transform(_shape)));

    /// <summary>The region under a mirroring or turning about the origin.</summary>
    public Region Under(Func<Vector2, Vector2> isometry)
    {
        var (x, y) = (isometry(new Vector2(1, 0)), isometry(new Vector2(0, 1)));
        return IsEmpty ? this : new(OnGrid(new AffineTransformation(x.X, y.X, 0, x.Y, y.Y, 0).Transform(_shape)));
    }

    /// <summary>Whether the regions overlap or come within a distance, mm, of each other.</summary>
    public bool IsNear(Region other, double distance) => !IsEmpty && !other.IsEmpty && _shape.IsWithinDistance(other._shape, distance);

    /// <summary>The region without its holes.</summary>
    public Region Filled() => new(_factory.BuildGeometry(Polygons(_shape).Select(polygon => _factory.CreatePolygon(polygon.ExteriorRing.Coordinates)).ToArray<Shape>()));

    /// <summary>Parts that are narrower than a width (mm) everywhere are left out.</summary>
    public Region WithoutNarrow(double width) =>
        new(_factory.BuildGeometry(Polygons(_shape).Where(polygon => !polygon.Buffer(-width / 2).IsEmpty).ToArray<Shape>()));

    // Overlays also return the lines and points where regions only touch: no area, left out.
    private static Shape Closed(Shape overlay)
    {
        var polygons = Polygons(overlay).ToArray<Shape>();
        var shape = _factory.BuildGeometry(polygons);
        if (polygons.Length == 0)
        {
            return Empty._shape;
        }

        if (polygons is [Polygon { NumInteriorRings: 0 }])
        {
            return shape;
        }

        var sharp = new BufferParameters { JoinStyle = JoinStyle.Mitre, MitreLimit = 20 };
        var closed = OnGrid(shape.Buffer(Dust, sharp).Buffer(-Dust, sharp));
        // Closing adds and takes nothing but rounding to the grid: where the library's buffer loses a part, what was is kept, dust and all.
        return closed.Area < shape.Area - (shape.Length / _grid.Scale) ? shape : _factory.BuildGeometry(Polygons(closed).ToArray<Shape>());
    }

    private static Shape OnGrid(Shape shape) => UnaryUnionNG.Union(shape, _grid);

    private static IEnumerable<Polygon> Polygons(Shape shape) =>
        Enumerable.Range(0, shape.NumGeometries).Select(shape.GetGeometryN).OfType<Polygon>().Where(polygon => !polygon.IsEmpty);

    private static Shape Polygon(ImmutableArray<Vector2> loop)
    {
        const int Triangle = 4;
        var points = loop.Select(p => new Coordinate(_grid.MakePrecise(p.X), _grid.MakePrecise(p.Y))).ToList();
        points.Add(points[0].Copy());
        var polygon = points.Count < Triangle ? _factory.CreatePolygon() : _factory.CreatePolygon([.. points]);
        return points.Count <= Triangle || polygon.IsValid ? polygon : GeometryFixer.Fix(polygon);
    }

    private static ImmutableArray<Vector2> Loop(Coordinate[] ring)
    {
        var points = ring.SkipLast(1).Select(c => new Vector2(c.X, c.Y)).ToList();
        for (var i = 0; i < points.Count && points.Count > 3;)
        {
            var (before, after) = (points[(i + points.Count - 1) % points.Count], points[(i + 1) % points.Count]);
            if (DistanceFromLine(points[i], before, after) <= Straight)
            {
                points.RemoveAt(i);
                i = Math.Max(0, i - 1);
            }
            else
            {
                i++;
            }
        }

        if (!Orientation.IsCCW(ring))
        {
            points.Reverse();
        }

        var first = points.IndexOf(points.OrderBy(p => p.Y).ThenBy(p => p.X).First());
        return [.. points[first..], .. points[..first]];
    }

    private static double DistanceFromLine(Vector2 point, Vector2 from, Vector2 to)
    {
        var along = to - from;
        return along.Length <= Straight ? (point - from).Length : Math.Abs(Vector2.Cross(along, point - from)) / along.Length;
    }

    private Region Overlay(Region other, SpatialFunction function) =>
        new(Closed(OverlayNG.Overlay(_shape, other._shape, function, _grid)));
}
