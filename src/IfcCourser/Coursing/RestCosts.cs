using System.Collections.Immutable;
using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>
/// What fills a segment from the start of a piece to its end costs at least, by the number of cells left: exact where no joint
/// costs anything by its place. One table serves all segments that end alike, whatever their length; it grows as longer ones
/// are asked for. For use by several threads at once.
/// </summary>
/// <param name="sizes">Pieces and joints.</param>
/// <param name="aims">What they cost.</param>
/// <param name="end">The segments' end.</param>
/// <param name="grid">How the segments end on the grid; its target is of no account.</param>
internal sealed class RestCosts(CellSizes sizes, BondAims aims, SegmentEnd end, SegmentGrid grid)
{
    public const long Unreachable = long.MaxValue / 4;

    private const int FirstSize = 1024;

    private readonly Lock _growing = new();
    private volatile Table? _table;

    /// <summary>The costs for up to <paramref name="cells"/> cells, and perhaps more.</summary>
    public Table UpTo(int cells)
    {
        if (_table is { } known && known.Last.Length > cells)
        {
            return known;
        }

        lock (_growing)
        {
            if (_table is null || _table.Last.Length <= cells)
            {
                _table = Filled(Math.Max(Math.Max(FirstSize, cells + 1), 2 * (_table?.Last.Length ?? 0)));
            }

            return _table;
        }
    }

    private Table Filled(int size)
    {
        var (last, more, joined) = (new long[size], new long[size], new long[size]);
        var raked = sizes.UpOf(end.Raked);
        var least = sizes.UpOf(end.Least);
        var windows = sizes.CutClasses.Select(_ => new SlidingMinimum()).ToArray();
        foreach (var window in windows)
        {
            window.Reset(size);
        }

        (last[0], more[0], joined[0]) = (Unreachable, Unreachable, Unreachable);
        for (var left = 1; left < size; left++)
        {
            last[left] = Last(left, raked, least);
            more[left] = Math.Min(Math.Min(Whole(left, raked, last, more), TightCut(left, last, more)), Cut(left, joined, windows));
            joined[left] = grid.MayBeLast(sizes.Joint) ? Math.Min(last[left], more[left]) : more[left];
        }

        return new Table(last, more);
    }

    // The last piece, which nothing follows.
    private long Last(int length, int raked, int least)
    {
        var isCut = grid.LastIsCut || !sizes.Wholes.Contains(length);
        if (length > sizes.Unit || (length == sizes.Unit && isCut))
        {
            return Unreachable;
        }

        var cost = !isCut ? raked > 0 ? aims.Cut : 0
            : aims.Cut + end.CutCost + (length < sizes.Least ? BondAims.Breach : length < sizes.Preferred ? aims.Short : 0);
        return length < least ? cost + aims.ShortAtRake : cost;
    }

    // A piece that needs no cut, with every joint width allowed after it.
    private long Whole(int left, int raked, long[] last, long[] more)
    {
        var best = Unreachable;
        foreach (var length in sizes.Wholes)
        {
            for (var joint = sizes.JointMin; joint <= sizes.JointMax && length + joint < left; joint++)
            {
                var rest = left - length - joint;
                var cost = grid.MayBeLast(joint) ? Math.Min(last[rest], more[rest]) : more[rest];
                cost += (Math.Abs(joint - sizes.Joint) * aims.JointStep) + (left - length < raked ? aims.Cut : 0);
                best = Math.Min(best, cost);
            }
        }

        return best;
    }

    // A cut piece of any length, with the nominal joint after it: of each class, the least over a window of what may be left.
    private long Cut(int left, long[] joined, SlidingMinimum[] windows)
    {
        var best = Unreachable;
        for (var i = 0; i < windows.Length; i++)
        {
            var (shortest, longest, weight) = sizes.CutClasses[i];
            var newest = left - shortest - sizes.Joint;
            if (newest > 0 && longest >= shortest && joined[newest] < Unreachable)
            {
                windows[i].Push(newest, joined[newest]);
            }

            windows[i].DropBefore(left - longest - sizes.Joint);
            if (!windows[i].IsEmpty)
            {
                best = Math.Min(best, windows[i].Value + weight);
            }
        }

        return best;
    }

    // A cut piece with a narrower joint after it: that piece, or the last one after it, is the shortest of its class.
    private long TightCut(int left, long[] last, long[] more)
    {
        var best = Unreachable;
        foreach (var (length, joint, weight) in sizes.TightCuts)
        {
            if (left - length - joint is var rest and > 0)
            {
                best = Math.Min(best, weight + (grid.MayBeLast(joint) ? Math.Min(last[rest], more[rest]) : more[rest]));
            }

            if (grid.MayBeLast(joint) && left > length && sizes.CutWeight(left - length - joint) is { } cut)
            {
                best = Math.Min(best, cut + ((sizes.Joint - joint) * aims.JointStep) + last[length]);
            }
        }

        return best;
    }

    /// <summary>The costs by the number of cells left.</summary>
    public sealed class Table
    {
        /// <param name="last">By cells left, where one piece fills them.</param>
        /// <param name="more">By cells left, where several pieces fill them.</param>
        public Table(long[] last, long[] more)
        {
            (Last, More) = (last, more);
            TightLasts = [.. Enumerable.Range(1, last.Length - 2).Where(left => last[left] < last[left + 1])];
        }

        /// <summary>Cost of the last piece, by the cells left for it.</summary>
        public long[] Last { get; }

        /// <summary>Cost of several pieces, by the cells left for them.</summary>
        public long[] More { get; }

        /// <summary>The least cost of what is left, of one piece or several.</summary>
        public long Least(int left) => Math.Min(Last[left], More[left]);

        /// <summary>Lengths of last pieces that cost less than one a cell longer.</summary>
        public ImmutableArray<int> TightLasts { get; }
    }
}
