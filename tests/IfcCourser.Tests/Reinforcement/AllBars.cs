using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Reinforcement;

/// <summary>Every set of bars of a small wall with an upright outline, each judged from the elevation alone, height by height.</summary>
internal sealed class AllBars(
    BarSite site, ImmutableArray<BarDemand> demands, IReadOnlyList<CourseMasonry> courses, LayoutRules rules)
{
    private const int MostBars = 5;

    /// <summary>All heights of the walls tried are multiples of it.</summary>
    private static readonly Length _step = Length.FromMm(200);

    /// <summary>The middles of the strips that edges of openings and lintels divide the height into.</summary>
    private readonly ImmutableArray<Length> _strips = Strips(
        site.Voids.SelectMany(rect => new[] { rect.Bottom, rect.Top })
            .Concat(site.Lintels.SelectMany(lintel => new[] { lintel.Bottom, lintel.Top }))
            .Concat(site.Wall.Outline.Select(point => point.Z)));

    private readonly Dictionary<Length, ImmutableArray<Interval>> _stretches = [];

    private readonly Dictionary<Length, ImmutableArray<Interval>> _asking = [];

    /// <summary>Demands unmet, gaps that are too wide at heights between any two edges, courses passed too near a joint, bars.</summary>
    public (int Unmet, int Gaps, int OnJoint, int Bars) Cost(ImmutableArray<(Length At, Interval Heights)> bars) => (
            demands.Count(demand => !bars.Any(bar => demand.Range.Contains(bar.At) && Serves(bar, demand))),
            Gaps(bars, rules.Set.Bars!),
            bars.Sum(bar => courses.Count(course => course.Height.Overlaps(bar.Heights) && course.Joints.Any(joint => Length.Abs(joint - bar.At) < rules.CoreClearance))),
            bars.Length);

    public (int Unmet, int Gaps, int OnJoint, int Bars) Least(Length grid)
    {
        var places = new SortedSet<Length>(demands.Select(demand => demand.Range).SelectMany(range => new[] { range.From, range.To }));
        for (var at = grid; at < site.Wall.Frame.Length; at += grid)
        {
            places.Add(at);
        }

        List<(Length At, Interval Heights)> spots =
            [.. places.SelectMany(at => Stretches(at).Select(stretch => (At: at, Heights: stretch))).Where(spot => MayStand(spot, rules.Set.Bars!))];
        var best = Cost([]);
        Grow([], 0);
        return best;

        void Grow(ImmutableArray<(Length At, Interval Heights)> bars, int next)
        {
            var cost = Cost(bars);
            best = cost.CompareTo(best) < 0 ? cost : best;
            for (var i = next; i < spots.Count && bars.Length < MostBars; i++)
            {
                Grow(bars.Add(spots[i]), i + 1);
            }
        }
    }

    /// <summary>Whether a course that a bar passes has a piece around it; so too where it passes none.</summary>
    public bool IsInPiece((Length At, Interval Heights) spot)
    {
        var passed = courses.Where(course => course.Height.Overlaps(spot.Heights)).ToList();
        return passed.Count == 0 || passed.Exists(course => course.Pieces.Any(piece => piece.From < spot.At && piece.To > spot.At));
    }

    private bool MayStand((Length At, Interval Heights) spot, BarRule bars) => IsInPiece(spot) && (
        demands.Any(demand => demand.Range.Contains(spot.At) && Serves(spot, demand))
        || (spot.At >= bars.FromEnd.Least && spot.At <= site.Wall.Frame.Length - bars.FromEnd.Least
            && site.Voids.All(rect => !rect.StandsBeside(new ElevationRect(spot.At, spot.At, spot.Heights.From, spot.Heights.To))
                || spot.At <= rect.Left - bars.FromJamb.Least || spot.At >= rect.Right + bars.FromJamb.Least)));

    private bool Serves((Length At, Interval Heights) bar, BarDemand demand)
    {
        long Share(Interval stretch) => Math.Max(0, (Length.Min(stretch.To, demand.Heights.To) - Length.Max(stretch.From, demand.Heights.From)).Nanometres);
        return Share(bar.Heights) > 0 && Stretches(bar.At).TakeWhile(other => other != bar.Heights).All(other => Share(other) < Share(bar.Heights))
            && Stretches(bar.At).All(other => Share(other) <= Share(bar.Heights));
    }

    private ImmutableArray<Interval> Stretches(Length at) => _stretches.TryGetValue(at, out var known) ? known : _stretches[at] = [.. Found(at, site.Voids)];

    private static ImmutableArray<Length> Strips(IEnumerable<Length> edges)
    {
        var rising = edges.Distinct().Order().ToList();
        return [.. rising.Zip(rising.Skip(1), (low, high) => low + ((high - low) / 2))];
    }

    /// <summary>Openings that ask for no bars don't end a row of bars.</summary>
    private ImmutableArray<Interval> Asking(Length at) => _asking.TryGetValue(at, out var known)
        ? known
        : _asking[at] = [.. Found(at, site.Voids.Where(rect => rect.Width >= rules.Set.Bars!.OpeningsFrom || rect.Height >= rules.Set.Bars!.OpeningsFrom))];

    private IEnumerable<Interval> Found(Length at, IEnumerable<ElevationRect> voids)
    {
        var from = (Length?)null;
        var top = site.Wall.Outline.Max(point => point.Z);
        ImmutableArray<ElevationRect> blocks =
            [.. voids.SelectMany(rect => site.Lintels.Where(lintel => lintel.Bottom == rect.Top).Select(lintel => new ElevationRect(lintel.From, lintel.To, lintel.Bottom, lintel.Top)).Append(rect))];
        for (var z = Length.Zero; z <= top; z += _step)
        {
            var isFree = z < top && !blocks.Any(rect => rect.Left < at && rect.Right > at && rect.Bottom <= z && rect.Top > z);
            if (isFree && from is null)
            {
                from = z;
            }
            else if (!isFree && from is { } foot)
            {
                yield return new Interval(foot, z);
                from = null;
            }
        }
    }

    /// <summary>How often neighbouring bars stand too far apart with masonry between them all along that asks for bars, in each strip of height.</summary>
    private int Gaps(ImmutableArray<(Length At, Interval Heights)> bars, BarRule rule) => _strips.Sum(z =>
    {
        var here = bars.Where(bar => bar.Heights.From < z && bar.Heights.To > z).OrderBy(bar => bar.At).ToList();
        return here.Zip(here.Skip(1)).Count(pair => pair.Second.At - pair.First.At > rule.LargestSpacing && Asks(pair.First.At, pair.Second.At, z, rule));
    });

    private bool Asks(Length from, Length to, Length z, BarRule rule)
    {
        for (var at = from; at <= to; at += _step / 2)
        {
            if (!Asking(at).Any(stretch => stretch.From < z && stretch.To > z && stretch.Size >= rule.SpacingFromHeight))
            {
                return false;
            }
        }

        return true;
    }
}
