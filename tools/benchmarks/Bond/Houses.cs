using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace BondBenchmark;

/// <summary>Invented houses of four walls each, of any lengths, with windows and doors where a designer put them.</summary>
internal static class Houses
{
    /// <summary>So many walls, the same for the same number.</summary>
    public static WallModel Storey(int walls, LayoutRules rules)
    {
        var random = new Sequence(walls);
        var all = ImmutableArray.CreateBuilder<Wall>(walls);
        var junctions = ImmutableArray.CreateBuilder<Junction>(walls);
        while (all.Count < walls)
        {
            var first = all.Count;
            var thickness = rules.Catalog.Widths[random.Next(rules.Catalog.Widths.Length)].Actual;
            var box = WallSketch.Box(
                Length.FromMm(random.Next(3000, 10000)), Length.FromMm(random.Next(3000, 8000)), Length.FromMm(random.Next(2450, 2800)), thickness);
            all.AddRange(box.Walls.Select((wall, i) => Placed(wall, first, i, random)));
            junctions.AddRange(box.Junctions.Select(junction => junction with { First = junction.First + first, Second = junction.Second + first }));
        }

        return new WallModel { Walls = all.ToImmutable(), Skipped = [], Junctions = junctions.ToImmutable(), Findings = [] };
    }

    private static Wall Placed(Wall wall, int first, int number, Sequence random)
    {
        var away = new Vector3(20_000.0 * first, 0, 0);
        return wall with
        {
            Identity = wall.Identity with { GlobalId = FormattableString.Invariant($"W{first + number}"), StepId = first + number + 1 },
            Frame = wall.Frame with { Origin = wall.Frame.Origin + away },
            Start = wall.Start with { With = [.. wall.Start.With.Select(other => other + first)] },
            End = wall.End with { With = [.. wall.End.With.Select(other => other + first)] },
            Openings = [.. Openings(wall.Frame.Length.Mm, random)],
        };
    }

    private static IEnumerable<WallOpening> Openings(double length, Sequence random)
    {
        var count = 0;
        for (double at = random.Next(700, 1800); ; at += random.Next(700, 1800))
        {
            var isDoor = random.Next(4) == 0;
            var width = isDoor ? 1010 : 760 + (250 * random.Next(5));
            if (at + width > length - 700)
            {
                yield break;
            }

            yield return WallSketch.Opening(count++, at, at + width, isDoor ? 0 : 875, isDoor ? 2135 : 2125);
            at += width;
        }
    }
}
