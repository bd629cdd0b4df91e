using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>
/// Flatness of a slab along its walls: of three readings in a line the middle one's distance from the straight between the others, beside the limit for how far these lie
/// apart (DIN 18202:2013 table 3 line 1, unfinished tops of slabs, from memory; between its distances in proportion).
/// </summary>
internal static class SlabFlatness
{
    private const string Source = "DIN 18202:2013 table 3 line 1, from memory";

    /// <summary>mm beside a wall at which readings still lie on its line. Common practice, no source.</summary>
    private const double Beside = 100;

    /// <summary>More readings along a wall are thinned out.</summary>
    private const int MostAlongWall = 60;

    private static readonly ImmutableArray<(double Apart, double Limit)> _table = [(100, 10), (1000, 15), (4000, 20), (10_000, 25), (15_000, 30)];

    /// <summary>What a slab may deviate between two places, mm; the last value of the table beyond it.</summary>
    internal static double LimitAt(double apart)
    {
        for (var i = 1; i < _table.Length; i++)
        {
            if (apart <= _table[i].Apart)
            {
                var (from, to) = (_table[i - 1], _table[i]);
                return from.Limit + ((to.Limit - from.Limit) * Math.Max(0, apart - from.Apart) / (to.Apart - from.Apart));
            }
        }

        return _table[^1].Limit;
    }

    /// <summary>The triple that comes nearest to its limit or passes it most; null where no three readings lie in a line.</summary>
    public static ToleranceCheck? Of(ImmutableArray<WallLayout> walls, PlacedReadings readings, UnitSystem units)
    {
        var checks = walls.Where(wall => wall.Frame.Curve is null).SelectMany(wall => Along(wall, readings, units)).ToList();
        return checks.MaxBy(check => check.Value / check.Limit);
    }

    private static IEnumerable<ToleranceCheck> Along(WallLayout wall, PlacedReadings readings, UnitSystem units)
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
                    yield return new ToleranceCheck(Messages.FlatAlong(wall.Identity.Label, apart, units), Math.Abs(kept[m].Height - straight), LimitAt(apart), Source);
                }
            }
        }
    }
}
