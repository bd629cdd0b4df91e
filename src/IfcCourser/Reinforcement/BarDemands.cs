using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Reinforcement;

/// <summary>What a rule set's bar rule demands of a wall: bars at its ends and corners and at both sides of openings and movement joints.</summary>
internal sealed class BarDemands(
    Wall wall, ImmutableArray<OpeningLayout> openings, ImmutableArray<Lintel> lintels, ImmutableArray<CornerPlace> corners, ImmutableArray<MovementJoint> joints, LayoutRules rules, BarRule bars)
{
    private readonly Length _length = wall.Frame.Length;
    private readonly Interval _full = new(Length.Zero, wall.Outline.Max(point => point.Z));

    /// <summary>The run less the corners, which the wall shares with its neighbours.</summary>
    private readonly Interval _own = new(
        corners.Where(corner => corner.Place.Side == JunctionSide.Start).Select(corner => corner.Place.To).DefaultIfEmpty(Length.Zero).Max(),
        corners.Where(corner => corner.Place.Side == JunctionSide.End).Select(corner => corner.Place.From).DefaultIfEmpty(wall.Frame.Length).Min());

    public IEnumerable<BarDemand> All()
    {
        foreach (var (junction, place) in corners)
        {
            var centre = place.From + ((place.To - place.From) / 2);
            yield return new BarDemand(new Interval(centre, centre), _full, "corner", junction);
        }

        if (wall.Start.Kind is EndKind.Free or EndKind.Tee or EndKind.Continued && !corners.Any(c => c.Place.Side == JunctionSide.Start))
        {
            yield return new BarDemand(Within(new Interval(bars.FromEnd.Least, bars.FromEnd.Largest), Run), _full, "end");
        }

        if (wall.End.Kind is EndKind.Free or EndKind.Tee or EndKind.Continued && !corners.Any(c => c.Place.Side == JunctionSide.End))
        {
            yield return new BarDemand(Within(new Interval(_length - bars.FromEnd.Largest, _length - bars.FromEnd.Least), Run), _full, "end");
        }

        foreach (var joint in joints.Select(joint => joint.Rect))
        {
            var (heights, far, near) = (new Interval(joint.Bottom, joint.Top), bars.FromMovementJoint.Largest, bars.FromMovementJoint.Least);
            if (PierLeftOf(joint).Size > Length.Zero)
            {
                yield return new BarDemand(Within(new Interval(joint.Left - far, joint.Left - near), PierLeftOf(joint)), heights, "movement-joint");
            }

            if (PierRightOf(joint).Size > Length.Zero)
            {
                yield return new BarDemand(Within(new Interval(joint.Right + near, joint.Right + far), PierRightOf(joint)), heights, "movement-joint");
            }
        }

        foreach (var opening in openings.Where(opening => opening.Interrupts).Select(opening => opening.Placed)
            .Where(placed => placed.Width >= bars.OpeningsFrom || placed.Height >= bars.OpeningsFrom))
        {
            var heights = new Interval(opening.Bottom, opening.Top);
            var left = Within(new Interval(opening.Left - bars.FromJamb.Largest, LeftLimit(opening)), PierLeftOf(opening));
            var right = Within(new Interval(RightLimit(opening), opening.Right + bars.FromJamb.Largest), PierRightOf(opening));
            if (PierLeftOf(opening).Size > Length.Zero)
            {
                yield return new BarDemand(left, heights, "jamb");
            }

            if (PierRightOf(opening).Size > Length.Zero)
            {
                yield return new BarDemand(right, heights, "jamb");
            }
        }
    }

    /// <summary>A jamb bar passes a solid lintel's bearing, where its range reaches that far.</summary>
    private Length LeftLimit(ElevationRect opening)
    {
        var near = opening.Left - bars.FromJamb.Least;
        var past = SolidOver(opening).Select(lintel => lintel.From - rules.CoreClearance - rules.Catalog.HeadJoint.Max).DefaultIfEmpty(near).Min();
        return past >= opening.Left - bars.FromJamb.Largest ? Length.Min(near, past) : near;
    }

    private Length RightLimit(ElevationRect opening)
    {
        var near = opening.Right + bars.FromJamb.Least;
        var past = SolidOver(opening).Select(lintel => lintel.To + rules.CoreClearance + rules.Catalog.HeadJoint.Max).DefaultIfEmpty(near).Max();
        return past <= opening.Right + bars.FromJamb.Largest ? Length.Max(near, past) : near;
    }

    private IEnumerable<Lintel> SolidOver(ElevationRect opening) => lintels.Where(lintel =>
        lintel.Kind == LintelKind.Solid && lintel.From < opening.Right && lintel.To > opening.Left && lintel.Top > opening.Top);

    private Interval Run => _own;

    private Interval PierLeftOf(ElevationRect opening) => new(
        Beside(opening).Where(other => other.Right <= opening.Left).Select(other => other.Right).DefaultIfEmpty(_own.From).Max(),
        opening.Left);

    private Interval PierRightOf(ElevationRect opening) => new(
        opening.Right,
        Beside(opening).Where(other => other.Left >= opening.Right).Select(other => other.Left).DefaultIfEmpty(_own.To).Min());

    private IEnumerable<ElevationRect> Beside(ElevationRect opening) => openings
        .Where(other => other.Interrupts)
        .Select(other => other.Placed)
        .Concat(joints.Select(joint => joint.Rect))
        .Where(other => other != opening && other.StandsBeside(opening));

    /// <summary>A range kept inside a pier, off its ends by the least distance or in its middle.</summary>
    private Interval Within(Interval range, Interval pier)
    {
        var middle = pier.From + (pier.Size / 2);
        var low = Length.Min(pier.From + bars.FromJamb.Least, middle);
        var high = Length.Max(pier.To - bars.FromJamb.Least, middle);
        var from = Length.Min(Length.Max(range.From, low), high);
        return new Interval(from, Length.Max(from, Length.Min(range.To, high)));
    }
}
