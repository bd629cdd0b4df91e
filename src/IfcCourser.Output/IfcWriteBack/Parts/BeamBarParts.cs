using System.Globalization;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Step21;
using IfcCourser.Units;
using IfcCourser.Walls;
using static System.FormattableString;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>The bars of bond beams as IfcReinforcingBar, swept along their axes as the layout lays them: along the beams, and bent around their corners.</summary>
internal sealed class BeamBarParts
{
    private const int ChordsOfBend = 8;

    /// <summary>Longest chord of a bar in a wall that is curved in plan.</summary>
    private static readonly Length _chord = Length.FromMm(100);

    private readonly BarEntities _bars;
    private readonly SharedShapes _shapes;
    private readonly PartSolids _solids;
    private readonly Dictionary<string, WallLayout> _walls;

    public BeamBarParts(BarEntities bars, SharedShapes shapes, PartSolids solids, Layout layout)
    {
        (_bars, _shapes, _solids) = (bars, shapes, solids);
        _walls = layout.Walls.GroupBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal).ToDictionary(wall => wall.Key, wall => wall.First(), StringComparer.Ordinal);
    }

    public IEnumerable<StepValue> Of(WallLayout wall, WallPlace place) => wall.BondBeams.Where(beam => BarSizes.Find(beam.BarSize) is not null)
        .SelectMany(beam => beam.Steel.Select((bar, i) => Along(wall, place, beam, bar, i)).Concat(beam.Corners.SelectMany((corner, c) => Around(wall, place, beam, corner, c))));

    private StepValue Along(WallLayout wall, WallPlace place, BondBeam beam, BeamBar bar, int i)
    {
        var chords = wall.Frame.Curve is null ? 1 : (int)((bar.To - bar.From) / _chord) + 1;
        var line = Enumerable.Range(0, chords + 1).Select(n => bar.From + ((bar.To - bar.From) * n / chords))
            .Select(s => wall.Frame.PointAt(s, bar.Across, Underside(beam, s) + bar.Height));
        return Bar(wall, place, beam, [.. line], bar.Mark, Invariant($"beam bar {beam.Id} {i}"), bar.Size);
    }

    /// <summary>Of a raked beam, the lower edge of its outline at a place.</summary>
    private static Length Underside(BondBeam beam, Length s)
    {
        if (beam.Outline is not { } outline)
        {
            return beam.Bottom;
        }

        var (first, last) = (Lowest(outline.Min(point => point.S)), Lowest(outline.Max(point => point.S)));
        return first.Z + Length.FromMm((last.Z - first.Z).Mm * (s - first.S).Mm / (last.S - first.S).Mm);

        ElevationPoint Lowest(Length end) => outline.Where(point => point.S == end).MinBy(point => point.Z);
    }

    /// <summary>A bar that is bent where the lines of its two legs meet in plan; none where the other wall is not laid out or goes straight on.</summary>
    private IEnumerable<StepValue> Around(WallLayout wall, WallPlace place, BondBeam beam, BeamCorner corner, int c)
    {
        if (!_walls.TryGetValue(corner.With, out var other))
        {
            yield break;
        }

        var z = wall.Frame.Origin.Z + beam.Bottom.Mm;
        foreach (var (bar, i) in corner.Bars.Select((bar, i) => (bar, i)))
        {
            var (own, ownAway) = Leg(wall.Frame, corner.At, bar.Across);
            var near = wall.Frame.PointAt(corner.At, wall.Frame.Thickness / 2, Length.Zero).Plan;
            var ends = new[] { Length.Zero, other.Frame.Length }.Select(s => (s, Far: (other.Frame.PointAt(s, other.Frame.Thickness / 2, Length.Zero).Plan - near).Length));
            var (met, metAway) = Leg(other.Frame, ends.MinBy(end => end.Far).s, bar.OtherAcross);
            var row = _bars.Row(bar.Mark);
            if (row is not null && Bent(own, ownAway, met, metAway, row) is { } line)
            {
                yield return Bar(wall, place, beam, [.. line.Select(point => new Vector3(point.X, point.Y, z + bar.Height.Mm))], bar.Mark, Invariant($"corner bar {beam.Id} {c} {i}"), row.Length);
            }
        }
    }

    /// <summary>A point of a leg's line, and its way from the corner into the wall.</summary>
    private static (Vector2 Point, Vector2 Away) Leg(WallFrame frame, Length at, Length across)
    {
        var side = at < frame.Length / 2 ? 1 : -1;
        var point = frame.PointAt(at, across, Length.Zero).Plan;
        return (point, (frame.PointAt(at + (_chord * side), across, Length.Zero).Plan - point).Unit());
    }

    /// <summary>The axis: legs to the schedule's outside dimensions, an arc between them; null where the legs lie in one line.</summary>
    private static IEnumerable<Vector2>? Bent(Vector2 own, Vector2 ownAway, Vector2 met, Vector2 metAway, BarScheduleRow row)
    {
        var cross = Vector2.Cross(ownAway, metAway);
        if (Math.Abs(cross) < 0.05)
        {
            return null;
        }

        var half = row.Size.Diameter.Mm / 2;
        var (turn, radius) = (Math.PI - Math.Acos(Math.Clamp(Vector2.Dot(ownAway, metAway), -1, 1)), row.Radius.Mm + half);
        var tip = own + (ownAway * (Vector2.Cross(met - own, metAway) / cross));
        var tangent = radius * Math.Tan(turn / 2);
        var centre = tip + (ownAway * tangent) + (ownAway.Left * (Math.Sign(cross) * radius));
        var spoke = tip + (ownAway * tangent) - centre;
        var arc = Enumerable.Range(0, ChordsOfBend + 1)
            .Select(i => Math.Sign(cross) * -turn * i / ChordsOfBend)
            .Select(angle => centre + (spoke * Math.Cos(angle)) + (spoke.Left * Math.Sin(angle)));
        return arc.Prepend(tip + (ownAway * (row.A.Mm - half))).Append(tip + (metAway * (row.B.Mm - half)));
    }

    private StepValue Bar(WallLayout wall, WallPlace place, BondBeam beam, IReadOnlyList<Vector3> points, string mark, string role, Length length)
    {
        var size = BarSizes.Find(beam.BarSize)!;
        var (placement, line) = place.Line(points);
        var kind = $"beam bar {size.Diameter.Nanometres.ToString(CultureInfo.InvariantCulture)} {string.Join(' ', line.Select(point => Invariant($"{point.X:0.###} {point.Y:0.###} {point.Z:0.###}")))}";
        var shape = _shapes.Add(PartLayer.Bars, kind, () => _solids.Bar(line, size.Diameter));
        return _bars.Add(wall, role, new PartBar(mark, size.Name, beam.Id, "MAIN", size.Diameter), placement, shape, length);
    }
}
