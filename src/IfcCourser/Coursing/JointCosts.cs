using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// The cost of a head joint by where its centre lies, on half cells of the cut grid, summed over all zones.
/// </summary>
internal sealed class JointCosts
{
    /// <summary>Zones are open intervals: a joint exactly at the limit is allowed, dust included.</summary>
    private const long DustNanometres = PieceCosts.DustNanometres;

    private readonly List<int> _drops = [];
    private long[] _costs = [];

    /// <summary>Half cells at which a zone ends that costs, or one begins that is worth something.</summary>
    public IReadOnlyList<int> Drops => _drops;

    /// <param name="task">The segment with its zones.</param>
    /// <param name="cell">Cell of the grid.</param>
    /// <param name="cells">Cells in the segment.</param>
    /// <param name="slack">How far joints may still slide when the segment's remainder is put into a joint.</param>
    public void Fill(SegmentTask task, Length cell, int cells, Length slack)
    {
        var half = cell.Nanometres;
        var size = (2 * cells) + 2;
        if (_costs.Length < size)
        {
            _costs = new long[size];
        }
        else
        {
            Array.Clear(_costs, 0, size);
        }

        _drops.Clear();
        foreach (var zone in task.Zones)
        {
            var reach = zone.Cost < 0 ? zone.Reach : zone.Reach + slack - new Length(DustNanometres);
            var first = FloorDivide(2 * (zone.Centre - reach).Nanometres, half) + 1;
            var last = FloorDivide((2 * (zone.Centre + reach).Nanometres) - 1, half);
            var low = Math.Max(0, first);
            var high = Math.Min(size - 2, last);
            if (low <= high)
            {
                _costs[low] += zone.Cost;
                _costs[high + 1] -= zone.Cost;
                _drops.Add(zone.Cost < 0 ? (int)low : (int)high + 1);
            }
        }

        for (var i = 1; i < size; i++)
        {
            _costs[i] += _costs[i - 1];
        }
    }

    /// <summary>Cost of a joint that ends at <paramref name="end"/> and is <paramref name="width"/> cells wide.</summary>
    public long At(int end, int width) => _costs[(2 * end) - width];

    private static long FloorDivide(long a, long b)
    {
        var quotient = a / b;
        return a % b < 0 ? quotient - 1 : quotient;
    }
}
