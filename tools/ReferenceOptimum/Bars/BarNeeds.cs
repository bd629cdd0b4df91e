using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;
using static ReferenceOptimum.Bars.WallElevation;

namespace ReferenceOptimum.Bars;

/// <summary>What a bar rule asks of a wall, stated anew: at corners, ends, movement joints, jambs and tees. Bars that users give are left out.</summary>
internal sealed class BarNeeds
{
    private readonly BarRule _rule;
    private readonly LayoutRules _rules;
    private readonly WallElevation _elevation;
    private readonly WallLayout _wall;
    private readonly ImmutableArray<JunctionPlace> _shared;
    private readonly ImmutableArray<JunctionPlace> _tees;
    private readonly ImmutableArray<Box> _movement;
    private readonly long _ownFrom;
    private readonly long _ownTo;
    private readonly long _top;

    /// <param name="wall">The wall.</param>
    /// <param name="layout">Which walls have no cores: a wall ends at a corner with one.</param>
    /// <param name="model">The walls as read, for corners and tees.</param>
    /// <param name="elevation">Of the wall.</param>
    public BarNeeds(WallLayout wall, Layout layout, WallModel model, WallElevation elevation)
    {
        var rules = layout.Rules;
        (_wall, _elevation, _rules, _rule) = (wall, elevation, rules, rules.Set.Bars!);
        var index = Enumerable.Range(0, model.Walls.Length).First(i => model.Walls[i].Identity == wall.Identity);
        var corners = model.Junctions.Where(junction => junction.Kind == JunctionKind.Corner && (junction.First == index || junction.Second == index))
            .Select(junction => (Place: junction.First == index ? junction.FirstPlace : junction.SecondPlace, Other: junction.First == index ? junction.Second : junction.First)).ToList();
        Corners = [.. corners.Select(corner => corner.Place)];
        _shared = [.. corners.Where(corner => !IsThin(model.Walls[corner.Other], layout)).Select(corner => corner.Place)];
        _tees = [.. model.Junctions.Where(junction => junction.Kind == JunctionKind.Tee && junction.First == index && junction.FirstPlace.Side == JunctionSide.Along).Select(junction => junction.FirstPlace)];
        _movement = [.. wall.MovementJoints.Select(joint => Box.Of(joint.Rect))];
        _ownFrom = Corners.Where(corner => corner.Side == JunctionSide.Start).Select(corner => Twice(corner.To)).DefaultIfEmpty(0).Max();
        _ownTo = Corners.Where(corner => corner.Side == JunctionSide.End).Select(corner => Twice(corner.From)).DefaultIfEmpty(Twice(wall.Frame.Length)).Min();
        _top = elevation.Outline.Max(point => point.Z);
    }

    public ImmutableArray<JunctionPlace> Corners { get; }

    public IEnumerable<BarNeed> All()
    {
        foreach (var corner in _shared)
        {
            var middle = (Twice(corner.From) + Twice(corner.To)) / 2;
            yield return new BarNeed(middle, middle, 0, _top);
        }

        var (least, largest, length) = (Twice(_rule.FromEnd.Least), Twice(_rule.FromEnd.Largest), Twice(_wall.Frame.Length));
        if (HasBar(_wall.Wall.Start, JunctionSide.Start))
        {
            yield return Kept(least, largest, _ownFrom, _ownTo, 0, _top);
        }

        if (HasBar(_wall.Wall.End, JunctionSide.End))
        {
            yield return Kept(length - largest, length - least, _ownFrom, _ownTo, 0, _top);
        }

        foreach (var need in _movement.SelectMany(AtJoint).Concat(_elevation.Large.SelectMany(AtOpening)))
        {
            yield return need;
        }

        if (_rule.FromTee is { } far)
        {
            foreach (var middle in _tees.Select(tee => (Twice(tee.From) + Twice(tee.To)) / 2))
            {
                yield return Kept(middle - Twice(far), middle + Twice(far), _ownFrom, _ownTo, 0, _top);
            }
        }
    }

    private static long Twice(Length length) => 2 * length.Nanometres;

    private static bool IsThin(Wall wall, Layout layout) => layout.Walls.Any(other => other.Identity == wall.Identity && HasNoCores(other));

    public static bool HasNoCores(WallLayout wall) => wall.Findings.Any(finding => finding.Code == FindingCodes.CoreNotPossible && finding.At is null);

    private bool HasBar(WallEnd end, JunctionSide side) => end.Kind switch
    {
        EndKind.Free => true,
        EndKind.Tee or EndKind.Continued or EndKind.Corner => _shared.All(corner => corner.Side != side) && (end.Kind != EndKind.Corner || Corners.Any(corner => corner.Side == side)),
        _ => false,
    };

    private IEnumerable<BarNeed> AtJoint(Box joint)
    {
        var (least, largest) = (Twice(_rule.FromMovementJoint.Least), Twice(_rule.FromMovementJoint.Largest));
        var (left, right) = (PierEnd(joint, isLeft: true), PierEnd(joint, isLeft: false));
        if (left < joint.Left2)
        {
            yield return Kept(joint.Left2 - largest, joint.Left2 - least, left, joint.Left2, joint.Bottom, joint.Top);
        }

        if (right > joint.Right2)
        {
            yield return Kept(joint.Right2 + least, joint.Right2 + largest, joint.Right2, right, joint.Bottom, joint.Top);
        }
    }

    /// <summary>Beside a solid lintel's bearing, a joint and the clearance away, where the range reaches so far: the bar runs up past the head.</summary>
    private IEnumerable<BarNeed> AtOpening(Box opening)
    {
        var (least, largest) = (Twice(_rule.FromJamb.Least), Twice(_rule.FromJamb.Largest));
        var beside = Twice(_rules.CoreClearance) + Twice(_rules.Catalog.HeadJoint.Max);
        var over = _elevation.Solid.Where(lintel => lintel.Left2 < opening.Right2 && lintel.Right2 > opening.Left2 && lintel.Top > opening.Top).ToList();
        var (left, right) = (PierEnd(opening, isLeft: true), PierEnd(opening, isLeft: false));
        if (left < opening.Left2)
        {
            var past = over.Select(lintel => lintel.Left2 - beside).Append(long.MaxValue).Min();
            var near = past >= opening.Left2 - largest ? Math.Min(past, opening.Left2 - least) : opening.Left2 - least;
            yield return Kept(opening.Left2 - largest, near, left, opening.Left2, opening.Bottom, opening.Top);
        }

        if (right > opening.Right2)
        {
            var past = over.Select(lintel => lintel.Right2 + beside).Append(long.MinValue).Max();
            var near = past <= opening.Right2 + largest ? Math.Max(past, opening.Right2 + least) : opening.Right2 + least;
            yield return Kept(near, opening.Right2 + largest, opening.Right2, right, opening.Bottom, opening.Top);
        }
    }

    /// <summary>Where the masonry beside an opening or joint ends.</summary>
    private long PierEnd(Box box, bool isLeft)
    {
        var others = _elevation.Voids.Concat(_movement).Where(other => other != box && other.IsBeside(box.Bottom, box.Top));
        return isLeft
            ? others.Where(other => other.Right2 <= box.Left2).Select(other => other.Right2).Append(_ownFrom).Max()
            : others.Where(other => other.Left2 >= box.Right2).Select(other => other.Left2).Append(_ownTo).Min();
    }

    /// <summary>The part of a range off a pier's ends by the least distance, the place nearest to it, or the middle of a pier too narrow for that.</summary>
    private BarNeed Kept(long from2, long to2, long pierFrom, long pierTo, long bottom, long top)
    {
        var least = Twice(_rule.FromJamb.Least);
        var (low, high) = pierTo - pierFrom <= 2 * least
            ? ((pierFrom + pierTo) / 4 * 2, (pierFrom + pierTo) / 4 * 2)
            : (pierFrom + least, pierTo - least);
        return new BarNeed(Math.Clamp(from2, low, high), Math.Clamp(to2, low, high), bottom, top);
    }
}
