using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>
/// A block over the slab: for each triangle under it the facet of its underside, with the designed underside less the slab as its value: the bed
/// where the first course stands as designed.
/// </summary>
/// <param name="Facets">Coordinates of the surface.</param>
/// <param name="Outside">Area that lies over no triangle, mm2, zero where it is small; for it the slab is as high as at the nearest place between readings.</param>
public sealed record BlockFacets(FirstCourseBlock Block, ImmutableArray<Facet> Facets, double Outside)
{
    /// <summary>Share of a block over no triangle that is rounding.</summary>
    private const double Dust = 1e-6;

    /// <summary>Share of a block beyond the readings from which on it is told: faces are not hit to the millimetre. Common practice, no source.</summary>
    private const double Told = 0.05;

    /// <summary>Those over triangles.</summary>
    public required ImmutableArray<Facet> OverReadings { get; init; }

    public static BlockFacets Of(FirstCourseBlock block, SlabSurface surface)
    {
        var whole = new Facet([.. block.Loop.Select(corner => new SlabVertex(corner - surface.Origin, 0))]);
        var facets = surface.Triangles
            .Where(triangle => MayTouch(triangle, whole))
            .Select(triangle => whole.LeftOf(triangle.A.Plan, triangle.B.Plan).LeftOf(triangle.B.Plan, triangle.C.Plan).LeftOf(triangle.C.Plan, triangle.A.Plan)
                .With(corner => block.Underside - triangle.At(corner.Plan)))
            .Where(facet => !facet.IsEmpty)
            .ToImmutableArray();
        var outside = whole.Area - facets.Sum(facet => facet.Area);
        var told = outside > whole.Area * Told ? outside : 0;
        return outside <= whole.Area * Dust
            ? new BlockFacets(block, facets, 0) { OverReadings = facets }
            : new BlockFacets(block, facets.Add(Rest(whole, facets, outside, block, surface)), told) { OverReadings = facets };
    }

    private static bool MayTouch(SlabTriangle triangle, Facet block)
    {
        SlabVertex[] corners = [triangle.A, triangle.B, triangle.C];
        return corners.Min(corner => corner.Plan.X) <= block.Corners.Max(corner => corner.Plan.X) && corners.Max(corner => corner.Plan.X) >= block.Corners.Min(corner => corner.Plan.X)
            && corners.Min(corner => corner.Plan.Y) <= block.Corners.Max(corner => corner.Plan.Y) && corners.Max(corner => corner.Plan.Y) >= block.Corners.Min(corner => corner.Plan.Y);
    }

    /// <summary>Stands for what lies outside: a square as large, around its centre, with one value.</summary>
    private static Facet Rest(Facet whole, ImmutableArray<Facet> facets, double area, FirstCourseBlock block, SlabSurface surface)
    {
        var moment = (whole.Middle * whole.Area) - facets.Aggregate(default(Vector2), (sum, facet) => sum + (facet.Middle * facet.Area));
        var middle = moment * (1 / area);
        var (half, value) = (Math.Sqrt(area) / 2, block.Underside - surface.At(middle));
        return new Facet([.. new Vector2[] { new(-half, -half), new(half, -half), new(half, half), new(-half, half) }.Select(corner => new SlabVertex(middle + corner, value))]);
    }
}
