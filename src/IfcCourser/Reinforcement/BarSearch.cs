using System.Collections.Immutable;
using System.Numerics;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>
/// The best bars of a wall, exactly: all demands met, no gap over the largest spacing, clear of joints, then the fewest. Goes from left to right
/// over every place, which may hold a bar under an opening and one over it; of the beginnings that reach a place only those are kept that no other
/// one beats in cost, in the places of the last bars (further on leaves more room) and in the demands met; where no effort is left, but a few of these.
/// </summary>
internal sealed class BarSearch(
    BarField field, ImmutableArray<ImmutableArray<Clearance>> clearances, Length largestSpacing, BarEffort effort)
{
    /// <summary>So many beginnings are kept where no effort is left: from the cheapest to those with the most bars, which leave more room.</summary>
    private const int FewKept = 16;

    private static readonly Length _none = new(long.MaxValue);

    /// <returns>Bars from left to right, as candidate and spot.</returns>
    public ImmutableArray<(int Candidate, int Spot)> Solve()
    {
        List<Beginning> beginnings = [new(default, [.. Enumerable.Repeat(_none, field.CellCount)], BigInteger.Zero, null)];
        var isTried = Tried();
        for (var c = 0; c < field.Candidates.Length; c++)
        {
            if (!isTried[c])
            {
                continue;
            }

            var candidate = field.Candidates[c];
            beginnings = beginnings.ConvertAll(beginning => At(beginning, candidate));
            var reached = beginnings.ToList();
            for (var spot = 0; spot < candidate.Spots.Length; spot++)
            {
                if (MayStand(field, candidate.Spots[spot], clearances[c][spot]))
                {
                    reached.AddRange(reached.ConvertAll(beginning => With(beginning, c, spot)));
                }
            }

            beginnings = Few(Unbeaten(reached));
        }

        var closed = field.Candidates.SelectMany(candidate => candidate.Closes).ToHashSet();
        var open = Enumerable.Range(0, field.Demands.Length).Where(demand => !closed.Contains(demand)).ToList();
        return Bars(beginnings.MinBy(beginning => Closed(beginning, open).Cost)!);
    }

    /// <summary>Whether a bar may stand: where the elevation lets it, in a piece; at a corner the wall that crosses has one around it.</summary>
    public static bool MayStand(BarField field, BarSpot spot, Clearance clearance) =>
        spot.MayStand && (clearance.IsInPiece || spot.Serves.Any(demand => field.Demands[demand].Junction is not null));

    /// <summary>
    /// The places that best bars take when each stands as far on as it can: the last of those that are alike, and as far from such a
    /// place as the spacing reaches, once or more often. Places where something begins or ends are tried too.
    /// </summary>
    private bool[] Tried()
    {
        var count = field.Candidates.Length;
        var isTried = new bool[count];
        var places = field.Candidates.Select(candidate => candidate.At).ToArray();
        for (var c = 0; c < count; c++)
        {
            if (c == 0 || c == count - 1 || !IsLike(c, c - 1) || !IsLike(c, c + 1))
            {
                isTried[c] = true;
                for (var next = AsFarOn(places, c); !isTried[next]; next = AsFarOn(places, next))
                {
                    isTried[next] = true;
                }
            }
        }

        return isTried;
    }

    /// <summary>The last place that a bar may take when one stands at another place.</summary>
    private int AsFarOn(Length[] places, int from)
    {
        var found = Array.BinarySearch(places, places[from] + largestSpacing);
        return found < 0 ? ~found - 1 : found;
    }

    private bool IsLike(int a, int b)
    {
        var (first, second) = (field.Candidates[a], field.Candidates[b]);
        return first.Spots == second.Spots && first.Closes.IsEmpty && second.Closes.IsEmpty && first.IsInLine == second.IsInLine
            && clearances[a].Zip(clearances[b]).All(pair => pair.First.OnJoint == pair.Second.OnJoint && pair.First.IsInPiece == pair.Second.IsInPiece);
    }

    /// <summary>Demands that no bar can meet any more cost where they are unmet, and are forgotten where they are met.</summary>
    private static Beginning Closed(Beginning beginning, IReadOnlyCollection<int> demands)
    {
        var (unmet, met) = (0, beginning.Met);
        foreach (var bit in demands.Select(demand => BigInteger.One << demand))
        {
            unmet += (met & bit).IsZero ? 1 : 0;
            met &= ~bit;
        }

        return demands.Count == 0 ? beginning : beginning with { Cost = beginning.Cost + new BarCost(unmet, 0, 0, 0, 0), Met = met };
    }

    /// <summary>A beginning carried on to a place: rows of bars end where no masonry asks for them.</summary>
    private static Beginning At(Beginning beginning, BarCandidate candidate)
    {
        var last = beginning.Last;
        for (var cell = 0; cell < last.Length; cell++)
        {
            if (!candidate.Asking[cell] && last[cell] != _none)
            {
                last = last.SetItem(cell, _none);
            }
        }

        return Closed(last == beginning.Last ? beginning : beginning with { Last = last }, candidate.Closes);
    }

    private Beginning With(Beginning beginning, int c, int s)
    {
        var candidate = field.Candidates[c];
        var spot = candidate.Spots[s];
        var (last, gaps) = (beginning.Last.ToBuilder(), 0);
        for (var cell = spot.Cells.First; cell <= spot.Cells.Last; cell++)
        {
            gaps += last[cell] != _none && candidate.At - last[cell] > largestSpacing ? 1 : 0;
            last[cell] = candidate.Asking[cell] ? candidate.At : _none;
        }

        var met = spot.Serves.Aggregate(beginning.Met, (bits, demand) => bits | (BigInteger.One << demand));
        var cost = beginning.Cost + new BarCost(0, gaps, clearances[c][s].OnJoint, 1, candidate.IsInLine ? 0 : 1);
        return new Beginning(cost, last.ToImmutable(), met, new PlacedBar(c, s, beginning.Bars));
    }

    private List<Beginning> Few(List<Beginning> beginnings) => beginnings.Count <= FewKept || effort.MaySearch()
        ? beginnings
        : [.. Enumerable.Range(0, FewKept).Select(i => beginnings[i * (beginnings.Count - 1) / (FewKept - 1)])];

    private List<Beginning> Unbeaten(List<Beginning> beginnings)
    {
        var kept = new List<Beginning>();
        beginnings.Sort(CheapestFirst);
        foreach (var beginning in beginnings)
        {
            if (!kept.Exists(other => Beats(other, beginning)))
            {
                kept.Add(beginning);
            }
        }

        return kept;
    }

    /// <summary>By cost; of equal ones those that may beat others come first.</summary>
    private static int CheapestFirst(Beginning a, Beginning b)
    {
        var order = a.Cost.CompareTo(b.Cost);
        for (var cell = 0; order == 0 && cell < a.Last.Length; cell++)
        {
            order = b.Last[cell].CompareTo(a.Last[cell]);
        }

        return order == 0 ? b.Met.CompareTo(a.Met) : order;
    }

    private bool Beats(Beginning better, Beginning worse)
    {
        for (var cell = 0; cell < better.Last.Length; cell++)
        {
            if (better.Last[cell] < worse.Last[cell])
            {
                effort.Spend(cell + 1);
                return false;
            }
        }

        effort.Spend(better.Last.Length);
        return (worse.Met & ~better.Met).IsZero;
    }

    private static ImmutableArray<(int Candidate, int Spot)> Bars(Beginning beginning)
    {
        var bars = new List<(int Candidate, int Spot)>();
        for (var bar = beginning.Bars; bar is not null; bar = bar.Before)
        {
            bars.Add((bar.Candidate, bar.Spot));
        }

        bars.Reverse();
        return [.. bars];
    }

    /// <param name="Last">Place of the last bar in each height cell; none where no bar stands since the row of masonry began.</param>
    /// <param name="Met">A bit for each demand met.</param>
    private sealed record Beginning(BarCost Cost, ImmutableArray<Length> Last, BigInteger Met, PlacedBar? Bars);

    private sealed record PlacedBar(int Candidate, int Spot, PlacedBar? Before);
}
