using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// Chooses the courses that are bond beams over the length of a wall: at its tops, at given heights and where the spacing asks
/// for one. Walls that meet at corners have their beams at the same heights: each takes those of its neighbours where it has a
/// whole course, so that the beams at the eaves run on through a gable.
/// </summary>
internal sealed class BeamLines
{
    private readonly ImmutableArray<WallLines> _walls;
    private readonly ImmutableArray<ImmutableArray<ElevationRect>> _openings;
    private readonly LayoutRules _rules;

    /// <summary>Of each wall, why its lines carry beams.</summary>
    private readonly SortedDictionary<int, SortedSet<string>>[] _beams;

    private BeamLines(ImmutableArray<WallLines> walls, ImmutableArray<ImmutableArray<ElevationRect>> openings, LayoutRules rules)
    {
        (_walls, _openings, _rules) = (walls, openings, rules);
        _beams = [.. walls.Select(_ => new SortedDictionary<int, SortedSet<string>>())];
    }

    /// <param name="walls">All walls with their courses.</param>
    /// <param name="junctions">How they meet.</param>
    /// <param name="openings">Of each wall, the openings that interrupt its courses, as placed.</param>
    /// <param name="rules">The rules of the run.</param>
    /// <returns>The walls with their beam courses.</returns>
    public static ImmutableArray<WallLines> Of(
        ImmutableArray<WallLines> walls, ImmutableArray<Junction> junctions, ImmutableArray<ImmutableArray<ElevationRect>> openings, LayoutRules rules)
    {
        if (rules.Set.BondBeams is null)
        {
            return walls;
        }

        var beams = new BeamLines(walls, openings, rules);
        foreach (var ring in beams.Rings(junctions))
        {
            beams.Demand(ring);
            beams.Space(ring);
        }

        return [.. walls.Select((wall, i) => beams.WithBeams(wall, i))];
    }

    /// <summary>Walls with beams that meet at corners, or go on in each other, on common course lines.</summary>
    private IEnumerable<ImmutableArray<int>> Rings(ImmutableArray<Junction> junctions)
    {
        var sets = new DisjointSets(_walls.Length);
        foreach (var junction in junctions.Where(junction => junction.Kind is JunctionKind.Corner or JunctionKind.Continued))
        {
            if (_walls[junction.First].Group == _walls[junction.Second].Group && RuleFor(junction.First) is not null && RuleFor(junction.Second) is not null)
            {
                sets.Unite(junction.First, junction.Second);
            }
        }

        return Enumerable.Range(0, _walls.Length).Where(wall => RuleFor(wall) is not null).GroupBy(sets.Root).Select(ring => ring.ToImmutableArray());
    }

    /// <summary>Beams at tops and given heights, and what of them neighbours take on.</summary>
    private void Demand(ImmutableArray<int> ring)
    {
        var asked = ring.SelectMany(wall => Asked(wall).Select(beam => (Wall: wall, beam.Band, beam.Why))).ToList();
        foreach (var (wall, band, why) in asked)
        {
            Add(wall, band.Line, why);
        }

        foreach (var (wall, band, _) in asked)
        {
            foreach (var other in ring.Where(other => !_beams[other].ContainsKey(band.Line)))
            {
                if (_walls[other].BandOnLine(band.Line) is { } same && IsWhole(same) && _walls[other].Base + same.Bottom == _walls[wall].Base + band.Bottom)
                {
                    Add(other, band.Line, "corner");
                }
            }
        }
    }

    private IEnumerable<(CourseBand Band, string Why)> Asked(int wall)
    {
        var (lines, rule) = (_walls[wall], RuleFor(wall)!);
        foreach (var top in rule.Tops == BeamedTops.None ? [] : new ElevationOutline(lines.Wall.Outline).LevelTops)
        {
            var bands = lines.Bands.Where(band => IsWhole(band) && band.Top <= top + _rules.Catalog.BedJoint.Nominal && top - band.Top <= Length.Max(rule.TopWithin, _rules.Set.MortarRest)).ToList();
            if (bands.Count > 0)
            {
                yield return (bands[^1], "top");
            }
        }

        foreach (var height in rule.Heights)
        {
            var bands = lines.Bands.Where(band => IsWhole(band) && band.Bottom <= height && band.Top + _rules.Catalog.BedJoint.Nominal > height).ToList();
            if (bands.Count > 0)
            {
                yield return (bands[0], "height");
            }
        }
    }

    /// <summary>More beams where those demanded lie too far apart, from the ring's lowest base to its highest top.</summary>
    private void Space(ImmutableArray<int> ring)
    {
        var walls = ring.Where(wall => !_walls[wall].Bands.IsEmpty).ToList();
        if (_rules.Set.BondBeams!.LargestSpacing is not { } spacing || walls.Count == 0)
        {
            return;
        }

        var free = Lines(walls);
        var fixedHeights = walls.SelectMany(wall => _beams[wall].Keys.Select(line => Middle(wall, _walls[wall].BandOnLine(line)!.Value))).Distinct().Order().ToList();
        var top = walls.Max(wall => _walls[wall].Base + _walls[wall].Bands[^1].Top);
        var from = walls.Min(wall => _walls[wall].Base);
        foreach (var to in fixedHeights.Append(top))
        {
            var between = free.Where(line => line.Middle > from && line.Middle < to).ToList();
            foreach (var chosen in BeamSpacing.Choose([.. between.Select(line => (line.Middle, line.Interrupted))], from, to, spacing))
            {
                foreach (var wall in walls.Where(wall => _walls[wall].BandOnLine(between[chosen].Line) is { } band && IsWhole(band)))
                {
                    Add(wall, between[chosen].Line, "spacing");
                }
            }

            from = to;
        }
    }

    /// <summary>The lines on which every wall of a ring that has a course has a whole one, and how many openings interrupt those.</summary>
    private List<(int Line, Length Middle, int Interrupted)> Lines(List<int> walls) =>
    [
        .. walls.SelectMany(wall => _walls[wall].Bands.Where(band => band.Number > 1).Select(band => (Wall: wall, Band: band)))
            .GroupBy(course => course.Band.Line)
            .Where(line => line.All(course => IsWhole(course.Band)) && line.Select(course => Middle(course.Wall, course.Band)).Distinct().Count() == 1)
            .Select(line => (line.Key, Middle(line.First().Wall, line.First().Band), line.Sum(course => Interrupting(course.Wall, course.Band))))
            .OrderBy(line => line.Key),
    ];

    private int Interrupting(int wall, CourseBand band) => _openings[wall].Count(opening => opening.Bottom < band.Top && opening.Top > band.Bottom);

    private Length Middle(int wall, CourseBand band) => _walls[wall].Base + band.Middle;

    /// <summary>A course of trough units is as high as a unit; the first course stands on the levelling bed and is none.</summary>
    private bool IsWhole(CourseBand band) => band.Height == _rules.Catalog.UnitHeight && band.Kind != CourseKind.Levelling;

    private BondBeamRule? RuleFor(int wall) => BeamDemands.RuleFor(_walls[wall].Wall, _rules);

    private void Add(int wall, int line, string why)
    {
        if (!_beams[wall].TryGetValue(line, out var reasons))
        {
            _beams[wall][line] = reasons = new SortedSet<string>(StringComparer.Ordinal);
        }

        reasons.Add(why);
    }

    private WallLines WithBeams(WallLines wall, int index) => wall with
    {
        Beams = [.. _beams[index].Select(beam => new BeamCourse(beam.Key, [.. beam.Value]))],
        Bands = [.. wall.Bands.Select(band => _beams[index].ContainsKey(band.Line) ? band with { Kind = CourseKind.BondBeam } : band)],
    };
}
