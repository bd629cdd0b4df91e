using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Reinforcement;

/// <summary>
/// What of a wall's elevation is laid: all of it, less the bond beams that are formed along its sloping tops. Such a beam is as deep
/// as a course, measured across the slope; at its foot it ends on the level of the slope's lower end, so that the course below, a
/// beam at the eaves, runs on under it.
/// </summary>
/// <param name="Outline">Of what is laid.</param>
/// <param name="Beams">From left to right.</param>
internal sealed record MasonryOutline(ElevationOutline Outline, ImmutableArray<RakedBeam> Beams)
{
    /// <summary>Steeper edges, over 60 degrees, are sides and no roofs. Common practice, no source.</summary>
    private const double SteepestTangent = 1.7320508075688772;

    public static MasonryOutline Of(Wall wall, LayoutRules rules)
    {
        var outline = new ElevationOutline(wall.Outline);
        var beams = ImmutableArray.CreateBuilder<RakedBeam>();
        foreach (var slope in BeamDemands.RuleFor(wall, rules) is { Tops: BeamedTops.Raked } ? Slopes(wall.Outline) : [])
        {
            if (Along(slope, outline, rules.Catalog.UnitHeight) is var (rest, beam))
            {
                outline = rest;
                beams.Add(beam);
            }
        }

        return new MasonryOutline(outline, [.. beams.OrderBy(beam => beam.Run.From)]);
    }

    /// <summary>Points of the sloping tops, from right to left; a ridge or a valley parts two.</summary>
    private static List<ImmutableArray<ElevationPoint>> Slopes(ImmutableArray<ElevationPoint> points)
    {
        var slopes = new List<ImmutableArray<ElevationPoint>>();
        var last = 0;
        for (var i = 0; i < points.Length; i++)
        {
            var (from, to) = (points[i], points[(i + 1) % points.Length]);
            var rise = to.S < from.S && from.Z != to.Z && Math.Abs((to.Z - from.Z).Mm) <= SteepestTangent * (from.S - to.S).Mm ? (to.Z > from.Z ? 1 : -1) : 0;
            if (rise != 0 && rise == last)
            {
                slopes[^1] = slopes[^1].Add(to);
            }
            else if (rise != 0)
            {
                slopes.Add([from, to]);
            }

            last = rise;
        }

        return slopes;
    }

    /// <summary>What is left of an outline under a beam along a slope, and the beam; null where too little is left or it would fall apart.</summary>
    private static (ElevationOutline Laid, RakedBeam Beam)? Along(ImmutableArray<ElevationPoint> slope, ElevationOutline outline, Length depth)
    {
        var edges = slope.Zip(slope.Skip(1), (right, left) => (Run: (right.S - left.S).Mm, Rise: (right.Z - left.Z).Mm)).ToList();
        var upright = Length.FromMm(depth.Mm * edges.Max(edge => Math.Sqrt((edge.Run * edge.Run) + (edge.Rise * edge.Rise)) / edge.Run));
        var band = slope.Concat(slope.Reverse().Select(point => point with { Z = point.Z - upright })).ToImmutableArray();
        if (outline.Common(band, slope.Min(point => point.Z)) is not [{ Points: { } beam } part] || outline.Without(beam) is not [var rest] || rest.Box.Height < depth)
        {
            return null;
        }

        var length = Length.FromMm(edges.Sum(edge => Math.Sqrt((edge.Run * edge.Run) + (edge.Rise * edge.Rise))));
        return (new ElevationOutline(rest.Corners), new RakedBeam(new Interval(slope[^1].S, slope[0].S), beam, part.Area, length));
    }
}
