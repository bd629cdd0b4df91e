using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>
/// A wall and its bars as built. Of the bars that come too near a joint as many as can be are held where they stand and the bond is solved
/// again around them, without breaking more rules than the bond as planned; all other bars of the wall are held too.
/// </summary>
internal sealed class WallAsBuilt
{
    /// <summary>So many sets of bars are tried at most: all sets of six.</summary>
    private const int MostTried = 64;

    private readonly WallLayout _wall;
    private readonly FinishedBond _bond;
    private readonly ImmutableArray<Bar> _others;
    private readonly Dictionary<string, Length> _moved;
    private readonly ImmutableArray<BarAsBuilt> _near;
    private readonly BondSolvers _solvers;
    private int _tried;

    /// <param name="wall">Finished.</param>
    /// <param name="bars">Its bars as built.</param>
    /// <param name="others">Bars of its corners that other walls list.</param>
    /// <param name="rules">Of the layout.</param>
    public WallAsBuilt(WallLayout wall, ImmutableArray<BarAsBuilt> bars, ImmutableArray<Bar> others, LayoutRules rules)
    {
        (_wall, _others, _bond) = (wall, others, new FinishedBond(wall, rules));
        _moved = bars.Where(bar => bar.Answer == BarAnswer.CoreMoves).ToDictionary(bar => bar.Core.Id, bar => bar.At, StringComparer.Ordinal);
        _near = [.. bars.Where(bar => bar.Where == BarPlace.OffAlong && _bond.MayBeClear(bar.Core, bar.At))];
        _solvers = new BondSolvers(wall.Frame.Thickness, _bond.Rules, new RestTables());
    }

    /// <summary>What the searches for its bond may do.</summary>
    public BondEffort Effort => _solvers.Effort;

    /// <summary>The wall as it is laid now, and the bars that a new bond clears; where a search was cut short, the wall's findings say so.</summary>
    public (WallLayout Wall, ImmutableArray<BarAsBuilt> Cleared) Solve()
    {
        var planned = Cores([]);
        var limit = ScoreOf(_bond.Laid, planned).Breaches;
        for (var count = _near.Length; count > 0; count--)
        {
            var best = Sets(count).TakeWhile(_ => _tried++ < MostTried && Effort.MaySearch()).Select(set => Attempt(set, limit)).OfType<Answer>().MinBy(answer => answer.Score);
            if (best is not null)
            {
                return (Told(_bond.With(best.Laid, best.Cores)), best.Bars);
            }
        }

        return (Told(_moved.Count == 0 ? _wall : _bond.With(_bond.Laid, planned)), []);
    }

    private WallLayout Told(WallLayout wall) => (Effort.IsCutShort || _tried > MostTried) && wall.Findings.All(finding => finding.Code != FindingCodes.BondSearchEnded)
        ? wall with { Findings = wall.Findings.Add(new Finding(FindingCodes.BondSearchEnded, Messages.BondSearchEnded)) }
        : wall;

    /// <summary>The bond around a set of bars; null where a bar of it stays too near a joint or more rules are broken than may be.</summary>
    private Answer? Attempt(ImmutableArray<BarAsBuilt> set, int mostBreaches)
    {
        var cores = Cores(set);
        var laid = new WallBond(_bond.Shapes, _wall.Lintels, Bars(cores), _solvers).Solve();
        var score = ScoreOf(laid, cores);
        return score.Breaches <= mostBreaches && set.All(bar => _bond.IsClear(bar.Core, bar.At, laid)) ? new Answer(set, cores, laid, score) : null;
    }

    /// <summary>All sets of so many bars, in order.</summary>
    private IEnumerable<ImmutableArray<BarAsBuilt>> Sets(int count)
    {
        return From(0, []);

        IEnumerable<ImmutableArray<BarAsBuilt>> From(int next, ImmutableArray<BarAsBuilt> chosen) => chosen.Length == count
            ? [chosen]
            : Enumerable.Range(next, Math.Max(0, _near.Length - next)).SelectMany(i => From(i + 1, chosen.Add(_near[i])));
    }

    private ImmutableArray<Core> Cores(ImmutableArray<BarAsBuilt> set)
    {
        var places = new Dictionary<string, Length>(_moved, StringComparer.Ordinal);
        foreach (var bar in set)
        {
            places[bar.Core.Id] = bar.At;
        }

        return [.. _wall.Cores.Select(core => places.TryGetValue(core.Id, out var at) ? core with { At = at } : core)];
    }

    private ImmutableArray<Bar> Bars(ImmutableArray<Core> cores) => [.. cores.Select(core => new Bar(core.At, core.Bottom, core.Top)), .. _others];

    private BondScore ScoreOf(ImmutableArray<LaidCourse> laid, ImmutableArray<Core> cores) => BondScore.Of(laid, Bars(cores), _wall.Lintels, _bond.Rules);

    private sealed record Answer(ImmutableArray<BarAsBuilt> Bars, ImmutableArray<Core> Cores, ImmutableArray<LaidCourse> Laid, BondScore Score);
}
