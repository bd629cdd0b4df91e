using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>
/// Places a wall's bars: all that rules demand (one bar serves demands whose ranges share a place) and the fewest more that the largest spacing
/// asks for, each where it is clear of every course's joints.
/// </summary>
internal sealed class BarPlacement
{
    private readonly LayoutRules _rules;
    private readonly BarRule _bars;
    private readonly BarHeights _heights;
    private readonly BarField _field;
    private readonly BarEffort _effort;

    /// <param name="site">The wall.</param>
    /// <param name="rules">Clearance and cut grid.</param>
    /// <param name="bars">What the rule set asks for.</param>
    /// <param name="effort">What the searches for the wall's bars may do.</param>
    public BarPlacement(BarSite site, LayoutRules rules, BarRule bars, BarEffort effort)
    {
        _effort = effort;
        _rules = rules;
        _bars = bars;
        _heights = new BarHeights(site, bars);
        _field = new BarField(site, [.. new BarDemands(site, rules, bars).All()], rules, bars);
        Required = [.. Stab().OrderBy(bar => bar.At)];
    }

    /// <summary>The fewest bars that meet the demands, whatever the spacing and the courses, each in the middle of its range.</summary>
    public ImmutableArray<BarPlace> Required { get; }

    /// <summary>All bars, where the courses let them stand.</summary>
    /// <param name="courses">Every course; none where only the spacing counts.</param>
    /// <param name="isDraft">Whether to leave bars where the search puts them, not evenly: to tell one bond from another.</param>
    public ImmutableArray<BarPlace> SettleAll(IReadOnlyList<CourseMasonry> courses, bool isDraft = false)
    {
        var clearance = new BarClearance(courses, _rules.CoreClearance, _rules.CoreClearance + _rules.Catalog.CutGrid);
        ImmutableArray<ImmutableArray<Clearance>> clearances =
            [.. _field.Candidates.Select(candidate => candidate.Spots.Select(spot => clearance.At(candidate.At, spot.Heights)).ToImmutableArray())];
        var best = new BarSearch(_field, clearances, _bars.LargestSpacing, _effort).Solve();
        return [.. (isDraft ? best : new BarSettling(_field, clearances, _bars.LargestSpacing).Settled(best)).Select(Place)];
    }

    /// <summary>Neighbouring bars that stand further apart than the largest spacing at some height, with masonry between them that asks for bars all along.</summary>
    public IEnumerable<Interval> Gaps(ImmutableArray<BarPlace> bars)
    {
        var levels = _heights.Levels;
        var gaps = new List<Interval>();
        for (var cell = 0; cell < _field.CellCount; cell++)
        {
            var height = new Interval(levels[cell], levels[cell + 1]);
            var here = bars.Where(bar => bar.Heights.Overlaps(height)).Select(bar => bar.At).Order().ToList();
            gaps.AddRange(here.Zip(here.Skip(1), (from, to) => new Interval(from, to)).Where(gap => gap.Size > _bars.LargestSpacing && Asks(gap, cell)));
        }

        return gaps.Distinct().OrderBy(gap => gap.From).ThenBy(gap => gap.To);
    }

    /// <summary>Demands that no bar meets, since no masonry of their ranges has a height that asks for them.</summary>
    public IEnumerable<BarDemand> Unmet(ImmutableArray<BarPlace> bars) =>
        _field.Demands.Where(demand => !bars.Any(bar => demand.Range.Contains(bar.At) && Stretch(bar.At, demand.Heights) == bar.Heights));

    /// <summary>A bar at another place.</summary>
    public BarPlace At(BarPlace bar, Length place) => bar with { At = place, Heights = Stretch(place, bar.Heights) };

    private BarPlace Place((int Candidate, int Spot) bar)
    {
        var candidate = _field.Candidates[bar.Candidate];
        var spot = candidate.Spots[bar.Spot];
        var demands = spot.Serves.Select(demand => _field.Demands[demand]).ToList();
        var range = demands.Count == 0
            ? new Interval(candidate.At, candidate.At)
            : new Interval(demands.Max(demand => demand.Range.From), demands.Min(demand => demand.Range.To));
        return new BarPlace(range, candidate.At, spot.Heights, demands.Count == 0 ? ["spacing"] : Reasons(demands), CornerOf(demands));
    }

    /// <summary>Fewest places that meet every range: each at the earliest range end not yet met.</summary>
    private IEnumerable<BarPlace> Stab()
    {
        var open = _field.Demands.OrderBy(demand => demand.Range.To).ThenBy(demand => demand.Range.From).ToList();
        while (open.Count > 0)
        {
            var limit = open[0].Range.To;
            var met = open.Where(demand => demand.Range.From <= limit && demand.Range.To >= limit).ToList();
            open.RemoveAll(met.Contains);
            var range = new Interval(met.Max(demand => demand.Range.From), limit);
            var at = range.From + (range.Size / 2);
            yield return new BarPlace(range, at, Stretch(at, met[0].Heights), Reasons(met), CornerOf(met));
        }
    }

    private Interval Stretch(Length at, Interval heights)
    {
        var stretches = _heights.At(at);
        return BarHeights.Sharing(stretches, heights) is { } stretch ? stretches[stretch] : default;
    }

    private bool Asks(Interval run, int cell) => _field.Candidates.Where(candidate => run.Contains(candidate.At)).All(candidate => candidate.Asking[cell]);

    private static ImmutableArray<string> Reasons(IEnumerable<BarDemand> demands) =>
        [.. demands.Select(demand => demand.Why).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private static int? CornerOf(IEnumerable<BarDemand> demands) => demands.Select(demand => demand.Junction).FirstOrDefault(junction => junction is not null);
}
