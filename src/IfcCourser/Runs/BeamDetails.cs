using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>Where the bars of all bond beams lie, once every wall is laid out: along the beams, and bent around their corners.</summary>
internal sealed class BeamDetails
{
    private readonly ImmutableArray<WallLayout> _walls;
    private readonly Dictionary<string, WallLayout> _known;
    private readonly LayoutRules _rules;
    private readonly BeamBars _bars;

    /// <param name="walls">All walls laid out.</param>
    /// <param name="bars">Of their beams.</param>
    /// <param name="rules">The rules of the run.</param>
    public BeamDetails(ImmutableArray<WallLayout> walls, BeamBars bars, LayoutRules rules)
    {
        (_walls, _bars, _rules) = (walls, bars, rules);
        _known = walls.GroupBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal).ToDictionary(wall => wall.Key, wall => wall.First(), StringComparer.Ordinal);
    }

    /// <summary>The walls with the bars of their beams, and what is too narrow for them.</summary>
    public ImmutableArray<WallLayout> Fill() => [.. _walls.Select(Fill)];

    private WallLayout Fill(WallLayout wall) => wall with
    {
        BondBeams = [.. wall.BondBeams.Select(beam => Fill(wall, beam))],
        Findings = [.. wall.Findings, .. wall.BondBeams.Where(beam => Section(wall, beam).IsCrowded).Select(Crowded)],
    };

    private BondBeam Fill(WallLayout wall, BondBeam beam)
    {
        var section = Section(wall, beam);
        return beam with
        {
            Steel = [.. section.Across.SelectMany((across, i) => Along(beam, i + 1, across, section.Height))],
            Corners = [.. beam.Corners.Select(corner => corner with { Bars = Around(wall, beam, corner, section) })],
        };
    }

    private BeamSection Section(WallLayout wall, BondBeam beam)
    {
        var trough = beam.Kind == BondBeamKind.Trough ? _rules.Catalog.TroughFor(wall.Frame.Thickness) : null;
        var upright = wall.Cores.IsEmpty || _rules.Set.Bars is not { } rule ? Length.Zero : rule.Bar.Diameter;
        return BeamSection.Of(wall.Frame.Thickness, trough, upright, _bars);
    }

    /// <summary>Bar after bar: each from the start of a lap, or the beam's cover, to the end of the next lap.</summary>
    private IEnumerable<BeamBar> Along(BondBeam beam, int bar, Length across, Length height)
    {
        var steep = Steepness(beam);
        var cover = Length.FromMm(_bars.Cover.End.Mm / steep);
        var laps = beam.Laps.Where(lap => lap.Bar == bar).OrderBy(lap => lap.From).ToList();
        return laps.Select(lap => lap.From).Prepend(beam.From + cover)
            .Zip(laps.Select(lap => lap.To).Append(beam.To - cover))
            .Where(stretch => stretch.Second > stretch.First)
            .Select((stretch, i) => new BeamBar(
                bar, stretch.First, stretch.Second, steep == 1 ? stretch.Second - stretch.First : Length.FromMm((stretch.Second - stretch.First).Mm * steep), across,
                Length.FromMm((height + (i % 2 == 1 ? _bars.Size.Diameter : Length.Zero)).Mm * steep)));
    }

    /// <summary>Length along a beam for one along the wall.</summary>
    private static double Steepness(BondBeam beam)
    {
        if (beam.Outline is not { } outline)
        {
            return 1;
        }

        var (first, last) = (outline.MinBy(point => point.S), outline.MaxBy(point => point.S));
        var rise = outline.Where(point => point.S == last.S).Min(point => point.Z) - outline.Where(point => point.S == first.S).Min(point => point.Z);
        var slope = rise.Mm / (last.S - first.S).Mm;
        return Math.Sqrt(1 + (slope * slope));
    }

    /// <summary>Bars of both beams from the corner's outside to its inside, one with one; those of a wall that has no such beam lie in its middle.</summary>
    private ImmutableArray<BeamCornerBar> Around(WallLayout wall, BondBeam beam, BeamCorner corner, BeamSection section)
    {
        var height = section.Height + (_bars.Size.Diameter * 2);
        if (!_known.TryGetValue(corner.With, out var other))
        {
            return [.. section.Across.Select(across => new BeamCornerBar(across, wall.Frame.Thickness / 2, height))];
        }

        var met = other.BondBeams.FirstOrDefault(candidate => candidate.Course is not null
            && Math.Abs(other.Frame.Origin.Z + candidate.Bottom.Mm - wall.Frame.Origin.Z - beam.Bottom.Mm) < 1);
        var beside = met is null ? [.. section.Across.Select(_ => other.Frame.Thickness / 2)] : Section(other, met).Across;
        var (away, otherAway) = (Away(wall.Frame, corner.At), Away(other.Frame, OtherEnd(wall, other, corner.At)));
        return
        [
            .. OutsideFirst(section.Across, wall.Frame, otherAway).Zip(OutsideFirst(beside, other.Frame, away))
                .Select(pair => new BeamCornerBar(pair.First, pair.Second, height)),
        ];
    }

    private static Length OtherEnd(WallLayout wall, WallLayout other, Length at)
    {
        var corner = wall.Frame.PointAt(at, wall.Frame.Thickness / 2, Length.Zero).Plan;
        var (start, end) = (other.Frame.PointAt(Length.Zero, other.Frame.Thickness / 2, Length.Zero).Plan, other.Frame.PointAt(other.Frame.Length, other.Frame.Thickness / 2, Length.Zero).Plan);
        return (corner - start).Length <= (corner - end).Length ? Length.Zero : other.Frame.Length;
    }

    /// <summary>From a corner into the wall.</summary>
    private static Vector2 Away(WallFrame frame, Length corner) => corner < frame.Length / 2 ? frame.Direction : -frame.Direction;

    /// <summary>The left face is outside where the other wall goes off to the right.</summary>
    private static IEnumerable<Length> OutsideFirst(ImmutableArray<Length> across, WallFrame frame, Vector2 otherAway) =>
        Vector2.Dot(frame.Normal, otherAway) < 0 ? across : across.Reverse();

    private static Finding Crowded(BondBeam beam) =>
        new(FindingCodes.BeamBarsCrowded, Messages.BeamBarsCrowded(beam.Id, beam.Bars), new FindingPlace { S = (beam.From + beam.To) / 2, Z = beam.Bottom, Course = beam.Course });
}
