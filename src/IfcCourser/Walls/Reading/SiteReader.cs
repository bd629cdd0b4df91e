using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Ifc.Bodies;

namespace IfcCourser.Walls.Reading;

/// <summary>Reads what walls are set out from: slabs under them, grid lines, the axes of a survey.</summary>
internal static class SiteReader
{
    /// <summary>Tops of slabs lie no further below a wall's base than this, mm: floor build-ups are thinner. Common practice, no source.</summary>
    public const double DeepestTop = 500;

    /// <summary>Tops of slabs lie no further above a wall's base than this, mm: walls may stand in a rebate. Common practice, no source.</summary>
    public const double HighestTop = 50;

    /// <summary>Solids higher than this, mm, are ramps, stairs or roofs. Common practice, no source.</summary>
    private const double Thickest = 1500;

    /// <param name="model">As read.</param>
    /// <param name="bases">Heights of the walls' bases, model axes, mm: slabs elsewhere are left unread.</param>
    public static Site Read(IfcModel model, IReadOnlyCollection<double> bases)
    {
        ImmutableArray<GridLine> grid = [.. model.GridAxes.Select(axis => new GridLine(axis.Tag, axis.Family, axis.From.Plan, axis.To.Plan))];
        return new Site(Slabs(model, bases), grid, Survey(model.Map, grid), model.TrueNorth);
    }

    /// <summary>What of the site is not as it should be.</summary>
    public static IEnumerable<Finding> Findings(IfcModel model) => model.Map is { IsScaleRead: false } map
        ? [new Finding(FindingCodes.MapScaleOdd, Messages.MapScaleOdd(map.Name))]
        : [];

    private static ImmutableArray<SlabFootprint> Slabs(IfcModel model, IReadOnlyCollection<double> bases)
    {
        var points = new PointReader(model.File, model.Units);
        var bodies = new BodyReader(model.File, model.Units);
        var slabs = ImmutableArray.CreateBuilder<SlabFootprint>();
        foreach (var slab in model.Slabs.Where(slab => slab.PredefinedType is not ("ROOF" or "LANDING")))
        {
            var seen = points.Read(slab.Representation, slab.Placement);
            if (!seen.IsEmpty && Box3.Around(seen) is var box && !IsUnder(box, bases))
            {
                continue;
            }

            var solid = bodies.Read(slab.Representation, slab.Placement).Solid;
            if (!solid.IsEmpty && IsUnder(solid.Box, bases))
            {
                slabs.Add(new SlabFootprint(slab.GlobalId, slab.Name, solid.Box.Max.Z, Projection.Plan(solid)));
            }
        }

        return slabs.ToImmutable();
    }

    private static bool IsUnder(Box3 slab, IReadOnlyCollection<double> bases) =>
        slab.Size.Z <= Thickest && bases.Any(height => slab.Max.Z >= height - DeepestTop && slab.Max.Z <= height + HighestTop);

    private static SurveyAxes Survey(IfcMapConversionRecord? map, ImmutableArray<GridLine> grid) =>
        map is not null ? OnMap(map) : OnGrid(grid) ?? SurveyAxes.Model;

    // E = E0 + k (x cos - y sin), N = N0 + k (x sin + y cos): IfcMapConversion, ISO 16739-1:2024, 8.18.3 (clause from memory).
    private static SurveyAxes OnMap(IfcMapConversionRecord map) => new(
        SurveyKind.Map, map.Name, map.Eastings, map.Northings, map.Height, new Vector2(map.XAxis.X, -map.XAxis.Y), map.Scale);

    /// <summary>The first line of the first family, and the first of another family square to it; eastings run along the one nearer to the x axis.</summary>
    private static SurveyAxes? OnGrid(ImmutableArray<GridLine> grid)
    {
        const double Square = 1e-4;
        foreach (var first in grid)
        {
            foreach (var second in grid.Where(line => line.Family != first.Family && Math.Abs(Vector2.Dot(line.Direction, first.Direction)) < Square))
            {
                var along = Math.Abs(first.Direction.X) >= Math.Abs(second.Direction.X) ? first.Direction : second.Direction;
                var east = along.X < 0 ? -along : along;
                var crossing = first.From + (first.Direction * (Vector2.Cross(second.From - first.From, second.Direction) / Vector2.Cross(first.Direction, second.Direction)));
                return new SurveyAxes(
                    SurveyKind.Grid, $"{first.Tag}/{second.Tag}", -Vector2.Dot(crossing, east), -Vector2.Dot(crossing, east.Left), 0, east, 1);
            }
        }

        return null;
    }
}
