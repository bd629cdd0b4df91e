using System.Collections.Immutable;
using IfcCourser.Units;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace IfcCourser.Geometry;

/// <summary>A wall's elevation outline and what lies of it in a rectangle; upright rectangles stay exact.</summary>
public sealed class ElevationOutline
{
    /// <summary>Parts smaller than this are dust of the intersection.</summary>
    private const double LeastAreaMm2 = 1;

    /// <summary>A part that misses its box by less than this along its edges is an upright rectangle to a mason.</summary>
    private const double EdgeDustMm = 1;

    private readonly NetTopologySuite.Geometries.Geometry? _polygon;

    /// <param name="points">Counter-clockwise, not closed.</param>
    public ElevationOutline(ImmutableArray<ElevationPoint> points)
    {
        Box = new ElevationRect(points.Min(p => p.S), points.Max(p => p.S), points.Min(p => p.Z), points.Max(p => p.Z));
        IsRectangle = points.Length == 4 && points.All(p => (p.S == Box.Left || p.S == Box.Right) && (p.Z == Box.Bottom || p.Z == Box.Top));
        _polygon = IsRectangle ? null : ToPolygon(points);
        LevelTops =
        [
            .. points.Where((point, i) => points[(i + 1) % points.Length] is var next && point.Z == next.Z && next.S < point.S)
                .Select(point => point.Z).Distinct().Order(),
        ];
        SlopedTops =
        [
            .. points.Select((point, i) => (To: point, From: points[(i + 1) % points.Length]))
                .Where(edge => edge.From.S < edge.To.S && edge.From.Z != edge.To.Z)
                .Select(edge => new Interval(edge.From.S, edge.To.S))
                .OrderBy(edge => edge.From),
        ];
    }

    /// <summary>Runs of the sloping edges at which it ends upwards, from left to right.</summary>
    public ImmutableArray<Interval> SlopedTops { get; }

    /// <summary>Heights of the level edges at which it ends upwards, rising; such an edge runs from right to left.</summary>
    public ImmutableArray<Length> LevelTops { get; }

    public ElevationRect Box { get; }

    public bool IsRectangle { get; }

    /// <summary>m2.</summary>
    public double Area => IsRectangle ? AreaOf(Box) : _polygon!.Area / 1e6;

    /// <summary>Area shared with a rectangle, m2.</summary>
    public double AreaWithin(ElevationRect rect) => Within(rect).Sum(part => part.Area);

    /// <summary>What lies in a rectangle, from left to right.</summary>
    public ImmutableArray<OutlinePart> Within(ElevationRect rect)
    {
        if (rect.Width <= Length.Zero || rect.Height <= Length.Zero)
        {
            return [];
        }

        if (IsRectangle)
        {
            var common = new ElevationRect(
                Length.Max(Box.Left, rect.Left), Length.Min(Box.Right, rect.Right), Length.Max(Box.Bottom, rect.Bottom), Length.Min(Box.Top, rect.Top));
            return common.Width > Length.Zero && common.Height > Length.Zero ? [new OutlinePart(common, null, AreaOf(common))] : [];
        }

        return Parts(OverlayNGRobust.Overlay(_polygon!, ToGeometry(rect), SpatialFunction.Intersection));
    }

    private NetTopologySuite.Geometries.Geometry Own() => _polygon ?? ToGeometry(Box);

    private static NetTopologySuite.Geometries.Geometry ToGeometry(ElevationRect rect) =>
        GeometryFactory.Default.ToGeometry(new Envelope(rect.Left.Mm, rect.Right.Mm, rect.Bottom.Mm, rect.Top.Mm));

    private static ImmutableArray<OutlinePart> Parts(NetTopologySuite.Geometries.Geometry shape) =>
        [
            .. Enumerable.Range(0, shape.NumGeometries)
                .Select(shape.GetGeometryN)
                .OfType<Polygon>()
                .Where(polygon => polygon.Area > LeastAreaMm2)
                .Select(ToPart)
                .OrderBy(part => part.Box.Left)
                .ThenBy(part => part.Box.Bottom),
        ];

    /// <summary>What lies in a rectangle beside others, from left to right.</summary>
    public ImmutableArray<OutlinePart> Within(ElevationRect rect, IEnumerable<ElevationRect> without)
    {
        var cuts = without.Where(cut => cut.Left < rect.Right && cut.Right > rect.Left && cut.StandsBeside(rect)).ToList();
        if (cuts.Count == 0)
        {
            return Within(rect);
        }

        var left = OverlayNGRobust.Overlay(Own(), ToGeometry(rect), SpatialFunction.Intersection);
        return Parts(cuts.Aggregate(left, (rest, cut) => OverlayNGRobust.Overlay(rest, ToGeometry(cut), SpatialFunction.Difference)));
    }

    /// <summary>What it shares with a polygon from a height upwards, from left to right.</summary>
    public ImmutableArray<OutlinePart> Common(ImmutableArray<ElevationPoint> polygon, Length above) => Parts(OverlayNGRobust.Overlay(
        OverlayNGRobust.Overlay(Own(), ToPolygon(polygon), SpatialFunction.Intersection),
        ToGeometry(Box with { Bottom = above }),
        SpatialFunction.Intersection));

    /// <summary>What a polygon leaves of it, from left to right.</summary>
    public ImmutableArray<OutlinePart> Without(ImmutableArray<ElevationPoint> polygon) =>
        Parts(OverlayNGRobust.Overlay(Own(), ToPolygon(polygon), SpatialFunction.Difference));

    /// <summary>The highest point of the outline between two places of the run.</summary>
    public Length HighestWithin(Length from, Length to)
    {
        var parts = Within(new ElevationRect(from, to, Box.Bottom, Box.Top));
        return parts.IsEmpty ? Box.Bottom : parts.Max(part => part.Box.Top);
    }

    private static double AreaOf(ElevationRect rect) => rect.Width.Mm * rect.Height.Mm / 1e6;

    // Rounding may make an outline touch itself; overlay needs it clean.
    private static NetTopologySuite.Geometries.Geometry ToPolygon(ImmutableArray<ElevationPoint> points)
    {
        var polygon = GeometryFactory.Default.CreatePolygon([.. points.Append(points[0]).Select(p => new Coordinate(p.S.Mm, p.Z.Mm))]);
        return polygon.IsValid ? polygon : GeometryFixer.Fix(polygon);
    }

    private static OutlinePart ToPart(Polygon polygon)
    {
        var ring = polygon.ExteriorRing.Coordinates;
        var rounded = ring.Select(c => new ElevationPoint(Length.FromMm(c.X), Length.FromMm(c.Y))).ToList();
        var points = rounded.Zip(rounded.Skip(1)).Where(edge => edge.First != edge.Second).Select(edge => edge.First).ToImmutableArray();
        if (NetTopologySuite.Algorithm.Orientation.IsCCW(ring) is false)
        {
            points = [.. points.Reverse()];
        }

        var box = new ElevationOutline(points).Box;
        var isUpright = points.All(point => IsAtEdge(point, box))
            && polygon.Area > (box.Width.Mm * box.Height.Mm) - (EdgeDustMm * (box.Width.Mm + box.Height.Mm));
        return new OutlinePart(box, isUpright ? null : points, polygon.Area / 1e6);
    }

    private static bool IsAtEdge(ElevationPoint point, ElevationRect box) =>
        new[] { point.S - box.Left, box.Right - point.S, point.Z - box.Bottom, box.Top - point.Z }.Min().Mm <= EdgeDustMm;
}
