using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>Every place of a wall where a bar may stand, on the catalog's cut grid and at the ends and in the middle of what is demanded.</summary>
internal sealed class BarField
{
    private readonly BarSite _site;
    private readonly BarRule _bars;
    private readonly BarHeights _heights;
    private readonly ImmutableArray<Length> _levels;

    public BarField(BarSite site, ImmutableArray<BarDemand> demands, LayoutRules rules, BarRule bars)
    {
        _site = site;
        _bars = bars;
        _heights = new BarHeights(site, bars);
        _levels = _heights.Levels;
        Demands = demands;
        Candidates = All(rules.Catalog.CutGrid);
    }

    public ImmutableArray<BarDemand> Demands { get; }

    /// <summary>From left to right.</summary>
    public ImmutableArray<BarCandidate> Candidates { get; }

    /// <summary>Heights between two levels.</summary>
    public int CellCount => _levels.Length - 1;

    private ImmutableArray<BarCandidate> All(Length grid)
    {
        var length = _site.Wall.Frame.Length;
        var places = new SortedSet<Length>(_site.InLine.Where(place => place > Length.Zero && place < length));
        for (var at = grid; at < length; at += grid)
        {
            places.Add(at);
        }

        // Between two edges the elevation stays the same: a place in each, so that no narrow opening slips through the grid.
        var edges = new SortedSet<Length>(_site.Voids.SelectMany(rect => new[] { rect.Left, rect.Right }).Concat(_site.Barriers.SelectMany(rect => new[] { rect.Left, rect.Right })));
        places.UnionWith(edges.Zip(edges.Skip(1), (left, right) => (left + right) / 2).Where(place => place > Length.Zero && place < length));
        places.UnionWith(Demands.Select(demand => demand.Range).SelectMany(range => new[] { range.From, range.From + (range.Size / 2), range.To }));
        var candidates = ImmutableArray.CreateBuilder<BarCandidate>(places.Count);
        var closed = new bool[Demands.Length];
        var breaks = Breaks();
        var next = 0;
        foreach (var at in places)
        {
            var isLikeLast = candidates.Count > 0 && (next == breaks.Length || breaks[next] > at) && !_heights.IsSloped(at);
            while (next < breaks.Length && breaks[next] < at)
            {
                next++;
            }

            var closes = Enumerable.Range(0, Demands.Length).Where(d => !closed[d] && Demands[d].Range.To < at).ToImmutableArray();
            foreach (var d in closes)
            {
                closed[d] = true;
            }

            candidates.Add(isLikeLast ? candidates[^1] with { At = at, Closes = closes, IsInLine = IsInLine(at) } : Candidate(at, closes));
        }

        return candidates.ToImmutable();
    }

    private BarCandidate Candidate(Length at, ImmutableArray<int> closes)
    {
        var stretches = _heights.At(at);
        var open = Enumerable.Range(0, Demands.Length).Where(d => Demands[d].Range.Contains(at))
            .Select(d => (Demand: d, Stretch: BarHeights.Sharing(stretches, Demands[d].Heights))).ToList();
        var asking = _heights.Asking(at);
        var spots = stretches.Select((stretch, i) =>
        {
            var serves = open.Where(demand => demand.Stretch == i).Select(demand => demand.Demand).ToImmutableArray();
            return new BarSpot(stretch, Cells(stretch), serves, !serves.IsEmpty || IsOffEdges(at, stretch));
        });
        return new BarCandidate(
            at,
            [.. spots],
            [.. Enumerable.Range(0, CellCount).Select(cell => asking.Any(stretch => stretch.From < _levels[cell + 1] && stretch.To > _levels[cell]))],
            closes,
            IsInLine(at));
    }

    private bool IsInLine(Length at) => _site.InLine.IsEmpty || _site.InLine.Contains(at);

    /// <summary>Places, rising, between which what a bar can take and meets stays the same but for slopes.</summary>
    private ImmutableArray<Length> Breaks()
    {
        var length = _site.Wall.Frame.Length;
        var edges = _site.Voids.Concat(_site.Barriers)
            .Concat(_site.MovementJoints.Select(joint => joint.Rect))
            .SelectMany(rect => new[] { rect.Left, rect.Right })
            .Concat(_site.Wall.Outline.Select(point => point.S))
            .ToList();
        var offEdges = new[] { _bars.FromJamb.Least, _bars.FromMovementJoint.Least }.SelectMany(off => edges.SelectMany(edge => new[] { edge - off, edge + off }));
        return
        [
            .. edges.Concat(offEdges)
                .Concat(_site.Corners.SelectMany(corner => new[] { corner.Place.From, corner.Place.To }))
                .Concat([_bars.FromEnd.Least, length - _bars.FromEnd.Least])
                .Concat(Demands.SelectMany(demand => new[] { demand.Range.From, demand.Range.To }))
                .Distinct()
                .Order(),
        ];
    }

    private (int First, int Last) Cells(Interval stretch)
    {
        var cells = Enumerable.Range(0, CellCount).Where(cell => stretch.From < _levels[cell + 1] && stretch.To > _levels[cell]).ToList();
        return cells.Count == 0 ? (0, -1) : (cells[0], cells[^1]);
    }

    /// <summary>Bars for the spacing keep off ends, jambs and movement joints as the bars beside these do, and off corners, which have their own.</summary>
    private bool IsOffEdges(Length at, Interval stretch)
    {
        if (at < _bars.FromEnd.Least || at > _site.Wall.Frame.Length - _bars.FromEnd.Least || _site.Corners.Any(corner => corner.Place.From < at && corner.Place.To > at))
        {
            return false;
        }

        return !_site.Voids.Any(rect => IsNear(rect, _bars.FromJamb.Least)) && !_site.MovementJoints.Any(joint => IsNear(joint.Rect, _bars.FromMovementJoint.Least));

        bool IsNear(ElevationRect rect, Length least) =>
            rect.Left - least < at && rect.Right + least > at && (rect.Left >= at || rect.Right <= at) && rect.Bottom < stretch.To && rect.Top > stretch.From;
    }
}
