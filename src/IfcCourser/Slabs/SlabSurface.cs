using System.Collections.Immutable;
using IfcCourser.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate;

namespace IfcCourser.Slabs;

/// <summary>The top of a slab between readings: plane over each triangle of their Delaunay triangulation.</summary>
public sealed class SlabSurface
{
    private SlabSurface(Vector2 origin, ImmutableArray<SlabTriangle> triangles)
    {
        Origin = origin;
        Triangles = triangles;
    }

    /// <summary>Zero of the triangles' coordinates, model axes, mm: far from the model's own zero they would lose decimals.</summary>
    public Vector2 Origin { get; }

    public ImmutableArray<SlabTriangle> Triangles { get; }

    /// <param name="readings">Each in a place of its own.</param>
    /// <returns>Null where there are fewer than three, or all lie in one line.</returns>
    public static SlabSurface? Of(IReadOnlyCollection<PlacedReading> readings)
    {
        const double LeastArea = 1;
        if (readings.Count < 3)
        {
            return null;
        }

        var origin = new Vector2(Math.Round(readings.Average(reading => reading.Plan.X)), Math.Round(readings.Average(reading => reading.Plan.Y)));
        var heights = readings.GroupBy(reading => Site(reading, origin)).ToDictionary(same => same.Key, same => same.First().Height);
        var builder = new DelaunayTriangulationBuilder();
        builder.SetSites(heights.Keys.Select(site => new Coordinate(site.X, site.Y)).ToArray());
        var triangles = builder.GetTriangles(new GeometryFactory())
            .Select(shape => shape.Coordinates.Take(3).Select(corner => new Vector2(corner.X, corner.Y)).ToArray())
            .Select(corners => new SlabTriangle(Vertex(corners[0]), Vertex(corners[1]), Vertex(corners[2])).CounterClockwise())
            .Where(triangle => triangle.Area > LeastArea)
            .OrderBy(triangle => triangle.A.Plan.X).ThenBy(triangle => triangle.A.Plan.Y).ThenBy(triangle => triangle.B.Plan.X).ThenBy(triangle => triangle.B.Plan.Y)
            .ToImmutableArray();
        return triangles.IsEmpty ? null : new SlabSurface(origin, triangles);

        SlabVertex Vertex(Vector2 place) => new(place, heights[place]);
    }

    /// <summary>The height at a place of its own coordinates, mm; outside all triangles that of the nearest place inside.</summary>
    public double At(Vector2 place)
    {
        var (nearest, distance) = (0.0, double.PositiveInfinity);
        foreach (var triangle in Triangles)
        {
            var inside = triangle.Nearest(place);
            var away = (inside - place).Length;
            if (away < distance)
            {
                (nearest, distance) = (triangle.At(inside), away);
            }

            if (away == 0)
            {
                break;
            }
        }

        return nearest;
    }

    private static Vector2 Site(PlacedReading reading, Vector2 origin) => reading.Plan - origin;
}
