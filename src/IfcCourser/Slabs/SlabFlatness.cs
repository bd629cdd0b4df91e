using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>
/// Flatness of a slab along its walls: of three readings in a line the middle one's distance from the straight between the others, beside the rule set's limit for how far
/// these lie apart.
/// </summary>
internal static class SlabFlatness
{
    /// <summary>mm beside a wall at which readings still lie on its line. Common practice, no source.</summary>
    private const double Beside = 100;

    /// <summary>More readings along a wall are thinned out.</summary>
    private const int MostAlongWall = 60;

    /// <summary>The triple that comes nearest to its limit or passes it most; null where no three readings lie in a line, or the rule set has no limits.</summary>
    public static ToleranceCheck? Of(ImmutableArray<WallLayout> walls, PlacedReadings readings, SlabTolerances tolerances, UnitSystem units)
    {
        if (tolerances.SlabFlatness is not { } limits)
        {
            return null;
        }

        var source = tolerances.SourceOf(SlabTolerancesReader.SlabFlatness);
        var checks = walls.Where(wall => wall.Frame.Curve is null)
            .SelectMany(wall => Along(wall, readings).Select(off => new ToleranceCheck(Messages.FlatAlong(wall.Identity.Label, off.Apart, units), off.Off, limits.InProportion(off.Apart), source)));
        return checks.MaxBy(check => check.Value / check.Limit);
    }

    private static IEnumerable<(double Apart, double Off)> Along(WallLayout wall, PlacedReadings readings)
    {
        var line = readings.Levels.Select(reading => (Local: reading.Plan - wall.Frame.Origin.Plan, reading.Height))
            .Select(reading => (S: Geometry.Vector2.Dot(reading.Local, wall.Frame.Direction), T: -Geometry.Vector2.Dot(reading.Local, wall.Frame.Normal), reading.Height))
            .Where(reading => reading.S >= -Beside && reading.S <= wall.Frame.Length.Mm + Beside && reading.T >= -Beside && reading.T <= wall.Frame.Thickness.Mm + Beside)
            .OrderBy(reading => reading.S).ThenBy(reading => reading.T).ToList();
        var step = (line.Count + MostAlongWall - 1) / MostAlongWall;
        var kept = line.Where((_, i) => i % Math.Max(1, step) == 0).ToList();
        for (var a = 0; a < kept.Count; a++)
        {
            for (var b = a + 2; b < kept.Count; b++)
            {
                var apart = kept[b].S - kept[a].S;
                for (var m = a + 1; m < b && apart > 0; m++)
                {
                    var straight = kept[a].Height + ((kept[b].Height - kept[a].Height) * (kept[m].S - kept[a].S) / apart);
                    yield return (apart, Math.Abs(kept[m].Height - straight));
                }
            }
        }
    }
}
