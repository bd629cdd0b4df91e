using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// A course of a pair in whole cells of the cut grid. Every place of a real bond is rounded down, pieces' starts and ends alike:
/// whole pieces keep their length, joints stay within limits that are whole cells, and a joint's doubled centre moves
/// down by less than two cells. What is forbidden here is forbidden for every real bond that rounds to it.
/// </summary>
internal sealed class PairRow
{
    private readonly List<(int From, int To, long Size)> _stretches = [];
    private readonly bool[] _forbidden;
    private readonly int[] _stretchAt;
    private readonly int[] _next;

    /// <param name="block">The pair.</param>
    /// <param name="course">Which course of it.</param>
    /// <param name="origin">Place of cell 0, in nanometres.</param>
    /// <param name="cells">Cells in the pair's run.</param>
    /// <param name="mayBear">Whether joints may stand under bearings.</param>
    public PairRow(Block block, int course, long origin, int cells, bool mayBear)
    {
        var cell = block.Sizes.Grid;
        _forbidden = new bool[(2 * cells) + 4];
        _stretchAt = new int[cells + 1];
        _next = new int[cells + 1];
        Array.Fill(_stretchAt, -1);
        foreach (var stretch in block.Stretches.Where(stretch => stretch.Course == course).OrderBy(stretch => stretch.From))
        {
            var (from, to) = ((int)((stretch.From - origin) / cell), (int)((stretch.To - origin) / cell));
            Array.Fill(_stretchAt, _stretches.Count, from, to - from);
            _stretches.Add((from, to, stretch.Size));
            foreach (var near in stretch.Near2)
            {
                Forbid(near - (2 * block.Sizes.Lap), near + (2 * block.Sizes.Lap), from, to);
            }

            foreach (var bearing in stretch.Bearings.Where(_ => !mayBear))
            {
                Forbid(bearing.From2, bearing.To2, from, to);
            }
        }

        foreach (var bar in block.Bars.Where(bar => bar.Least2 == bar.Most2 && bar.Courses.Any(c => c.Course == course)))
        {
            Forbid(bar.Least2 - (2 * block.Sizes.Clearance), bar.Least2 + (2 * block.Sizes.Clearance), 0, cells);
        }

        for (var place = cells; place >= 0; place--)
        {
            _next[place] = place == cells || _stretchAt[place] >= 0 ? place : _next[place + 1];
        }

        // Joints are forbidden between doubled places lo and hi: the real centre lies in [centre, centre + 2) cells.
        void Forbid(long lo, long hi, int from, int to)
        {
            for (var centre = 2 * from; centre <= 2 * to; centre++)
            {
                _forbidden[centre] |= (2 * origin) + (centre * cell) > lo && (2 * origin) + ((centre + 2) * cell) <= hi;
            }
        }
    }

    public bool MayStand(int centre2) => !_forbidden[centre2];

    /// <summary>Whether a piece starts here; else nothing stands between here and the next stretch.</summary>
    public bool IsInStretch(int place) => place < _stretchAt.Length && _stretchAt[place] >= 0;

    public bool IsStretchStart(int place) => IsInStretch(place) && _stretches[_stretchAt[place]].From == place;

    public int StretchEnd(int place) => _stretches[_stretchAt[place]].To;

    public long StretchSize(int place) => _stretches[_stretchAt[place]].Size;

    /// <summary>The next stretch's start, or the run's end.</summary>
    public int Next(int place) => _next[place];
}
