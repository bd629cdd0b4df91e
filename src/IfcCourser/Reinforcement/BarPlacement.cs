using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Reinforcement;

/// <summary>
/// Places a wall's bars: the fewest that meet all demands (one bar serves demands whose ranges share a place), then more
/// where the spacing would exceed the rule's, each moved within its range to where it is clear of every course's joints.
/// </summary>
internal sealed class BarPlacement(
    Wall wall, ImmutableArray<OpeningLayout> openings, ImmutableArray<Lintel> lintels, LayoutRules rules, BarRule bars)
{
    private readonly Length _length = wall.Frame.Length;
    private readonly ElevationOutline _outline = new(wall.Outline);

    /// <summary>The bars the wall's ends, corners and openings need, each in the middle of its range.</summary>
    /// <param name="demands">What the rules ask for.</param>
    public ImmutableArray<BarPlace> Required(IEnumerable<BarDemand> demands) => [.. Stab(demands).OrderBy(bar => bar.At)];

    /// <summary>Required bars where the courses let them stand, and more between them where the spacing asks for it.</summary>
    /// <param name="required">Bars that rules ask for at places.</param>
    /// <param name="courses">Height and joints of every course.</param>
    public ImmutableArray<BarPlace> SettleAll(
        ImmutableArray<BarPlace> required, IReadOnlyList<(Interval Height, ImmutableArray<Length> Joints)> courses)
    {
        var settled = required.Select(bar => Settle(bar, courses)).ToList();
        return [.. settled.Concat(Spaced(settled).Select(bar => Settle(bar, courses))).OrderBy(bar => bar.At)];
    }

    /// <summary>A bar at another place.</summary>
    public BarPlace At(BarPlace bar, Length place) => bar with { At = place, Heights = Stretch(place, bar.Heights) };

    /// <summary>Moves a bar, within its range, to the place that most courses pass with clearance.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="courses">Height and joints of every course.</param>
    private BarPlace Settle(BarPlace bar, IReadOnlyList<(Interval Height, ImmutableArray<Length> Joints)> courses)
    {
        var passed = courses.Where(course => course.Height.Overlaps(bar.Heights)).Select(course => course.Joints).ToList();
        var middle = bar.Range.From + (bar.Range.Size / 2);
        var enough = rules.CoreClearance + rules.Catalog.CutGrid;
        var best = Candidates(bar.Range)
            .Select(at =>
            {
                var distances = passed.Select(joints => Nearest(joints, at)).ToList();
                return (At: at,
                    Conflicts: distances.Count(distance => distance < rules.CoreClearance),
                    Clear: Length.Min(enough, distances.DefaultIfEmpty(enough).Min()));
            })
            .OrderBy(place => place.Conflicts)
            .ThenByDescending(place => place.Clear)
            .ThenBy(place => Length.Abs(place.At - middle))
            .ThenBy(place => place.At)
            .First();
        return At(bar, best.At);
    }

    /// <summary>Fewest places that meet every range: each at the earliest range end not yet met.</summary>
    private IEnumerable<BarPlace> Stab(IEnumerable<BarDemand> demands)
    {
        var open = demands.OrderBy(demand => demand.Range.To).ThenBy(demand => demand.Range.From).ToList();
        while (open.Count > 0)
        {
            var limit = open[0].Range.To;
            var met = open.Where(demand => demand.Range.From <= limit && demand.Range.To >= limit).ToList();
            var range = new Interval(met.Max(demand => demand.Range.From), limit);
            open.RemoveAll(met.Contains);
            yield return Place(
                range, met[0].Heights, [.. met.Select(demand => demand.Why).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
                met.Select(demand => demand.Junction).FirstOrDefault(junction => junction is not null));
        }
    }

    /// <summary>Bars between those required, evenly, where they stand further apart than the rule allows.</summary>
    private IEnumerable<BarPlace> Spaced(List<BarPlace> required)
    {
        var ordered = required.OrderBy(bar => bar.At).ToList();
        for (var i = 1; i < ordered.Count; i++)
        {
            var gap = ordered[i].At - ordered[i - 1].At;
            var bays = (gap.CeilingTo(bars.LargestSpacing)) / bars.LargestSpacing;
            for (var bay = 1; bay < bays; bay++)
            {
                var spot = ordered[i - 1].At + (gap * bay / bays);
                if (!openings.Any(opening => opening.Interrupts && opening.Placed.Left < spot && opening.Placed.Right > spot))
                {
                    var play = (bars.LargestSpacing - (gap / bays)) / 2;
                    yield return Place(new Interval(spot - play, spot + play), new Interval(Length.Zero, _outline.Box.Top), ["spacing"], null);
                }
            }
        }
    }

    private BarPlace Place(Interval range, Interval heights, ImmutableArray<string> why, int? junction)
    {
        var at = range.From + (range.Size / 2);
        return new BarPlace(range, at, Stretch(at, heights), why, junction);
    }

    /// <summary>The stretch of the wall's height that a bar can take: clear of openings and solid lintels, sharing most with what asks for it.</summary>
    private Interval Stretch(Length at, Interval heights)
    {
        var blocks = openings.Where(opening => opening.Interrupts && opening.Placed.Left < at && opening.Placed.Right > at)
            .Select(opening => new Interval(opening.Placed.Bottom, opening.Placed.Top))
            .Concat(lintels.Where(lintel => lintel.Kind != LintelKind.Trough && lintel.From < at && lintel.To > at)
                .Select(lintel => new Interval(lintel.Bottom, lintel.Top)))
            .OrderBy(block => block.From);
        var (from, best) = (Length.Zero, new Interval(Length.Zero, Length.Zero));
        var top = _outline.HighestWithin(at - Length.FromMm(1), at + Length.FromMm(1));
        foreach (var block in blocks.Append(new Interval(top, top)))
        {
            var stretch = new Interval(from, block.From);
            best = Shared(stretch, heights) > Shared(best, heights) ? stretch : best;
            from = Length.Max(from, block.To);
        }

        return best;
    }

    private static Length Shared(Interval a, Interval b) => Length.Max(Length.Zero, Length.Min(a.To, b.To) - Length.Max(a.From, b.From));

    private IEnumerable<Length> Candidates(Interval range)
    {
        yield return range.From + (range.Size / 2);
        for (var at = range.From.CeilingTo(rules.Catalog.CutGrid); at <= range.To && at < _length; at += rules.Catalog.CutGrid)
        {
            yield return at;
        }
    }

    private static Length Nearest(ImmutableArray<Length> joints, Length at) =>
        joints.IsEmpty ? new Length(long.MaxValue) : joints.Min(joint => Length.Abs(joint - at));
}
