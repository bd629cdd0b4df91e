using System.Collections.Immutable;
using IfcCourser.Geometry;
using NetTopologySuite.Geometries;

namespace IfcCourser.Takeoff;

/// <summary>Loops in plan, mm, as NetTopologySuite has them.</summary>
internal static class PlanPolygon
{
    public static Polygon Of(ImmutableArray<Vector2> loop) => GeometryFactory.Default.CreatePolygon([.. loop.Append(loop[0]).Select(At)]);

    public static LineString Line(Vector2 from, Vector2 to) => GeometryFactory.Default.CreateLineString([At(from), At(to)]);

    private static Coordinate At(Vector2 point) => new(point.X, point.Y);
}
