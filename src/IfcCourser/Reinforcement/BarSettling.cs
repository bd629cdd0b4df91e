using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>
/// Moves bars one after the other, from the right, where the search left the narrow bays, to where a rod setter would want them, their cost kept: farther from joints, then nearer to the middle of what
/// is demanded or, bars for the spacing, to where these stand evenly.
/// </summary>
internal sealed class BarSettling
{
    private const int MostRounds = 4;

    private readonly BarField _field;
    private readonly ImmutableArray<ImmutableArray<Clearance>> _clearances;
    private readonly Length _largestSpacing;
    private readonly int[][] _endings;

    public BarSettling(BarField field, ImmutableArray<ImmutableArray<Clearance>> clearances, Length largestSpacing)
    {
        _field = field;
        _clearances = clearances;
        _largestSpacing = largestSpacing;
        _endings = [.. Enumerable.Range(0, field.CellCount).Select(Endings)];
    }

    public ImmutableArray<(int Candidate, int Spot)> Settled(ImmutableArray<(int Candidate, int Spot)> bars)
    {
        for (var round = 0; round < MostRounds; round++)
        {
            var before = bars;
            for (var i = bars.Length - 1; i >= 0; i--)
            {
                bars = bars.SetItem(i, BestFor(bars, i));
            }

            if (bars.SequenceEqual(before))
            {
                break;
            }
        }

        return bars;
    }

    /// <summary>What bars cost, counted from the bars alone.</summary>
    public BarCost Cost(ImmutableArray<(int Candidate, int Spot)> bars)
    {
        var last = Enumerable.Repeat(-1, _field.CellCount).ToArray();
        var served = new HashSet<int>();
        var (gaps, onJoint, offLine) = (0, 0, 0);
        foreach (var (c, s) in bars)
        {
            var spot = Spot(c, s);
            served.UnionWith(spot.Serves);
            onJoint += _clearances[c][s].OnJoint;
            offLine += _field.Candidates[c].IsInLine ? 0 : 1;
            for (var cell = spot.Cells.First; cell <= spot.Cells.Last; cell++)
            {
                var isApart = last[cell] >= 0 && _field.Candidates[c].At - _field.Candidates[last[cell]].At > _largestSpacing;
                gaps += isApart && _endings[cell][c + 1] == _endings[cell][last[cell]] ? 1 : 0;
                last[cell] = c;
            }
        }

        return new BarCost(_field.Demands.Length - served.Count, gaps, onJoint, bars.Length, offLine);
    }

    private (int Candidate, int Spot) BestFor(ImmutableArray<(int Candidate, int Spot)> bars, int i)
    {
        var others = bars.RemoveAt(i).SelectMany(bar => Spot(bar).Serves).ToHashSet();
        var needed = Spot(bars[i]).Serves.Where(demand => !others.Contains(demand)).ToList();
        var middle = needed.Count > 0 ? MiddleOf(needed) : Even(bars, i);
        var (from, to) = (i == 0 ? (Candidate: 0, Spot: -1) : bars[i - 1], i == bars.Length - 1 ? (Candidate: _field.Candidates.Length - 1, Spot: int.MaxValue) : bars[i + 1]);
        var cost = Cost(bars);
        return Enumerable.Range(from.Candidate, to.Candidate - from.Candidate + 1)
            .SelectMany(c => Enumerable.Range(0, _field.Candidates[c].Spots.Length).Select(s => (Candidate: c, Spot: s)))
            .Where(place => place.CompareTo(from) > 0 && place.CompareTo(to) < 0)
            .Where(place => BarSearch.MayStand(_field, Spot(place), ClearanceOf(place)) && ClearanceOf(place).OnJoint <= ClearanceOf(bars[i]).OnJoint && needed.TrueForAll(Spot(place).Serves.Contains))
            .OrderByDescending(place => ClearanceOf(place).Distance)
            .ThenBy(place => Length.Abs(_field.Candidates[place.Candidate].At - middle))
            .ThenBy(place => place)
            .Where(place => place == bars[i] || Cost(bars.SetItem(i, place)).CompareTo(cost) <= 0)
            .DefaultIfEmpty(bars[i])
            .First();
    }

    private Length MiddleOf(List<int> demands)
    {
        var ranges = demands.ConvertAll(demand => _field.Demands[demand].Range);
        var common = new Interval(ranges.Max(range => range.From), ranges.Min(range => range.To));
        return common.From + (common.Size / 2);
    }

    /// <summary>Where a bar for the spacing stands evenly between the demanded bars on both sides that share a height with it; its own place where one lacks.</summary>
    private Length Even(ImmutableArray<(int Candidate, int Spot)> bars, int i)
    {
        var heights = Spot(bars[i]).Heights;
        var left = bars.Take(i).Reverse().Where(bar => Spot(bar).Heights.Overlaps(heights)).ToList();
        var right = bars.Skip(i + 1).Where(bar => Spot(bar).Heights.Overlaps(heights)).ToList();
        var (bays, more) = (left.FindIndex(IsDemanded) + 1, right.FindIndex(IsDemanded) + 1);
        if (bays == 0 || more == 0)
        {
            return _field.Candidates[bars[i].Candidate].At;
        }

        var (from, to) = (_field.Candidates[left[bays - 1].Candidate].At, _field.Candidates[right[more - 1].Candidate].At);
        return from + ((to - from) * bays / (bays + more));

        bool IsDemanded((int Candidate, int Spot) bar) => !Spot(bar).Serves.IsEmpty;
    }

    /// <summary>How many candidates before each one have masonry that asks for no bars at a cell.</summary>
    private int[] Endings(int cell)
    {
        var endings = new int[_field.Candidates.Length + 1];
        for (var c = 0; c < _field.Candidates.Length; c++)
        {
            endings[c + 1] = endings[c] + (_field.Candidates[c].Asking[cell] ? 0 : 1);
        }

        return endings;
    }

    private BarSpot Spot((int Candidate, int Spot) bar) => Spot(bar.Candidate, bar.Spot);

    private BarSpot Spot(int candidate, int spot) => _field.Candidates[candidate].Spots[spot];

    private Clearance ClearanceOf((int Candidate, int Spot) bar) => _clearances[bar.Candidate][bar.Spot];
}
