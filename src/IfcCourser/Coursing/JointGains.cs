using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>What joints may still gain by zones that are worth something, from a place on to the segment's end: asked for with rising places.</summary>
internal sealed class JointGains
{
    private int[] _ends = [];
    private long[] _costs = [];
    private int _count;
    private long _all;
    private int _next;
    private long _left;

    /// <param name="zones">The segment's zones.</param>
    /// <param name="cell">Cell of the grid.</param>
    public void Fill(ImmutableArray<JointZone> zones, Length cell)
    {
        if (_ends.Length < zones.Length)
        {
            (_ends, _costs) = (new int[zones.Length], new long[zones.Length]);
        }

        (_count, _all) = (0, 0);
        foreach (var zone in zones)
        {
            if (zone.Cost < 0)
            {
                (_ends[_count], _costs[_count]) = ((int)((zone.Centre + zone.Reach).CeilingTo(cell) / cell), zone.Cost);
                _count++;
                _all += zone.Cost;
            }
        }

        Array.Sort(_ends, _costs, 0, _count);
        Restart();
    }

    /// <summary>Goes back to the segment's start.</summary>
    public void Restart() => (_next, _left) = (0, _all);

    /// <summary>The cost that joints after a cell can't come below.</summary>
    public long After(int start)
    {
        while (_next < _count && _ends[_next] <= start)
        {
            _left -= _costs[_next++];
        }

        return _left;
    }
}
