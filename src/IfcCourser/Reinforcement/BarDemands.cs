using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Reinforcement;

/// <summary>What a rule set's bar rule demands of a wall: bars at its ends, corners and tees, at both sides of openings and movement joints, and where the user gives them.</summary>
internal sealed class BarDemands(BarSite site, LayoutRules rules, BarRule bars)
{
    private readonly Length _length = site.Wall.Frame.Length;
    private readonly Interval _full = new(Length.Zero, site.Wall.Outline.Max(point => point.Z));

    /// <summary>The run less the corners, which the wall shares with its neighbours.</summary>
    private readonly Interval _own = new(
        site.Corners.Where(corner => corner.Place.Side == JunctionSide.Start).Select(corner => corner.Place.To).DefaultIfEmpty(Length.Zero).Max(),
        site.Corners.Where(corner => corner.Place.Side == JunctionSide.End).Select(corner => corner.Place.From).DefaultIfEmpty(site.Wall.Frame.Length).Min());

    public IEnumerable<BarDemand> All() =>
        AtCorners().Concat(AtEnds()).Concat(AtMovementJoints()).Concat(AtOpenings()).Concat(AtTees()).Concat(Given());

    private IEnumerable<BarDemand> AtCorners()
    {
        foreach (var (junction, place, _) in site.Corners.Where(corner => corner.HasBar))
        {
            var centre = place.From + ((place.To - place.From) / 2);
            yield return new BarDemand(new Interval(centre, centre), _full, "corner", junction);
        }
    }

    private IEnumerable<BarDemand> AtEnds()
    {
        if (HasEndBar(site.Wall.Start, JunctionSide.Start))
        {
            yield return new BarDemand(Within(new Interval(bars.FromEnd.Least, bars.FromEnd.Largest), _own), _full, "end");
        }

        if (HasEndBar(site.Wall.End, JunctionSide.End))
        {
            yield return new BarDemand(Within(new Interval(_length - bars.FromEnd.Largest, _length - bars.FromEnd.Least), _own), _full, "end");
        }
    }

    private bool HasEndBar(WallEnd end, JunctionSide side)
    {
        var corners = site.Corners.Where(corner => corner.Place.Side == side).ToList();
        return end.Kind is EndKind.Free || (corners.Count > 0 ? !corners.Exists(corner => corner.HasBar) : end.Kind is EndKind.Tee or EndKind.Continued);
    }

    private IEnumerable<BarDemand> AtMovementJoints()
    {
        foreach (var joint in site.MovementJoints.Select(joint => joint.Rect))
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
    }

    private IEnumerable<BarDemand> AtOpenings()
    {
        foreach (var opening in site.Voids.Where(placed => bars.AsksAtOpening(placed.Width, placed.Height)))
        {
            var heights = new Interval(opening.Bottom, opening.Top);
            if (PierLeftOf(opening).Size > Length.Zero)
            {
                yield return new BarDemand(Within(new Interval(opening.Left - bars.FromJamb.Largest, LeftLimit(opening)), PierLeftOf(opening)), heights, "jamb");
            }

            if (PierRightOf(opening).Size > Length.Zero)
            {
                yield return new BarDemand(Within(new Interval(RightLimit(opening), opening.Right + bars.FromJamb.Largest), PierRightOf(opening)), heights, "jamb");
            }
        }
    }

    /// <summary>In a main wall, near the middle of each wall that abuts.</summary>
    private IEnumerable<BarDemand> AtTees() => bars.FromTee is not { } far ? [] : site.Tees
        .Select(tee => tee.From + (tee.Size / 2))
        .Select(middle => new BarDemand(Within(new Interval(middle - far, middle + far), _own), _full, "tee"));

    private IEnumerable<BarDemand> Given() => bars.Given
        .Where(given => string.Equals(given.Wall, site.Wall.Identity.GlobalId, StringComparison.Ordinal) || string.Equals(given.Wall, site.Wall.Identity.Name, StringComparison.Ordinal))
        .Where(given => given.At <= _length)
        .Select(given => new BarDemand(new Interval(Length.Max(given.At - given.Play, Length.Zero), Length.Min(given.At + given.Play, _length)), _full, given.Why));

    /// <summary>A jamb bar passes beside the bearing of a lintel that no bar passes, where its range reaches that far.</summary>
    private Length LeftLimit(ElevationRect opening)
    {
        var near = opening.Left - bars.FromJamb.Least;
        var past = SolidOver(opening).Select(lintel => lintel.Left - rules.CoreClearance - rules.Catalog.HeadJoint.Max).DefaultIfEmpty(near).Min();
        return past >= opening.Left - bars.FromJamb.Largest ? Length.Min(near, past) : near;
    }

    private Length RightLimit(ElevationRect opening)
    {
        var near = opening.Right + bars.FromJamb.Least;
        var past = SolidOver(opening).Select(lintel => lintel.Right + rules.CoreClearance + rules.Catalog.HeadJoint.Max).DefaultIfEmpty(near).Max();
        return past <= opening.Right + bars.FromJamb.Largest ? Length.Max(near, past) : near;
    }

    private IEnumerable<ElevationRect> SolidOver(ElevationRect opening) =>
        site.OwnBarriers.Where(lintel => lintel.Left < opening.Right && lintel.Right > opening.Left && lintel.Top > opening.Top);

    private Interval PierLeftOf(ElevationRect opening) => new(
        Beside(opening).Where(other => other.Right <= opening.Left).Select(other => other.Right).DefaultIfEmpty(_own.From).Max(),
        opening.Left);

    private Interval PierRightOf(ElevationRect opening) => new(
        opening.Right,
        Beside(opening).Where(other => other.Left >= opening.Right).Select(other => other.Left).DefaultIfEmpty(_own.To).Min());

    private IEnumerable<ElevationRect> Beside(ElevationRect opening) => site.Voids
        .Concat(site.MovementJoints.Select(joint => joint.Rect))
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
