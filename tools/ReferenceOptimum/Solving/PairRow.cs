using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// A course of a pair in whole cells of the cut grid. Every place of a real bond is rounded down, pieces' starts and ends alike:
/// whole pieces keep their length, joints stay within limits that are whole cells, and a joint's doubled centre moves
/// down by less than two cells, not at all where all is on the grid. What is forbidden here is forbidden for every real bond that rounds to it.
/// </summary>
internal sealed class PairRow
{
    private readonly List<(int From, int To, long Size, int FullFrom, int FullTo)> _stretches = [];
    private readonly byte[] _near;
    private readonly bool[] _forbidden;
    private readonly int[] _stretchAt;
    private readonly int[] _next;

    /// <param name="block">The pair.</param>
    /// <param name="course">Which course of it.</param>
    /// <param name="origin">Place of cell 0, in nanometres.</param>
    /// <param name="cells">Cells in the pair's run.</param>
    /// <param name="slack">By how much less than so many cells rounding may move a doubled centre down.</param>
    /// <param name="mayBear">Whether joints may stand under bearings.</param>
    /// <param name="mayBreak">Whether joints may stand near others and near bars.</param>
    public PairRow(Block block, int course, long origin, int cells, int slack, bool mayBear, bool mayBreak)
    {
        var cell = block.Sizes.Grid;
        _near = new byte[(2 * cells) + 4];
        _forbidden = new bool[(2 * cells) + 4];
        _stretchAt = new int[cells + 1];
        _next = new int[cells + 1];
        Array.Fill(_stretchAt, -1);
        foreach (var stretch in block.Stretches.Where(stretch => stretch.Course == course).OrderBy(stretch => stretch.From))
        {
            var (from, to) = ((int)((stretch.From - origin) / cell), (int)((stretch.To - origin) / cell));
            Array.Fill(_stretchAt, _stretches.Count, from, to - from);
            var (fullFrom, fullTo) = (stretch.From + stretch.Run.Start.Extent - origin, stretch.To - stretch.Run.End.Extent - origin);
            _stretches.Add((from, to, stretch.Size, (int)((slack == 0 ? fullFrom + cell - 1 : fullFrom) / cell), (int)(fullTo / cell)));
            foreach (var near in stretch.Near2)
            {
                foreach (var centre in Between(near - (2 * block.Sizes.Lap), near + (2 * block.Sizes.Lap), from, to))
                {
                    _near[centre]++;
                }
            }

            foreach (var bearing in stretch.Bearings.Where(_ => !mayBear))
            {
                Forbid(Between(bearing.From2, bearing.To2, from, to));
            }
        }

        foreach (var bar in block.Bars.Where(bar => !mayBreak && bar.Least2 == bar.Most2 && bar.Courses.Any(c => c.Course == course)))
        {
            Forbid(Between(bar.Least2 - (2 * block.Sizes.Clearance), bar.Least2 + (2 * block.Sizes.Clearance), 0, cells));
        }

        for (var place = cells; place >= 0; place--)
        {
            _next[place] = place == cells || _stretchAt[place] >= 0 ? place : _next[place + 1];
        }

        // Cells at which a real centre, that lies in [centre, centre + slack) cells, is between doubled places lo and hi.
        IEnumerable<int> Between(long lo, long hi, int from, int to) => Enumerable.Range(2 * from, (2 * (to - from)) + 1)
            .Where(centre => (2 * origin) + (centre * cell) > lo && (2 * origin) + ((centre + slack) * cell) - (slack > 0 ? 1 : 0) < hi);

        void Forbid(IEnumerable<int> centres)
        {
            foreach (var centre in centres)
            {
                _forbidden[centre] = true;
            }
        }
    }

    /// <summary>How many joints that stand whatever is laid are nearer than the lap.</summary>
    public int Near(int centre2) => _near[centre2];

    public bool MayStand(int centre2) => !_forbidden[centre2];

    /// <summary>Whether a piece starts here; else nothing stands between here and the next stretch.</summary>
    public bool IsInStretch(int place) => place < _stretchAt.Length && _stretchAt[place] >= 0;

    public bool IsStretchStart(int place) => IsInStretch(place) && _stretches[_stretchAt[place]].From == place;

    public int StretchEnd(int place) => _stretches[_stretchAt[place]].To;

    public long StretchSize(int place) => _stretches[_stretchAt[place]].Size;

    /// <summary>Whether a piece is cut by a slope wherever between its cells it is.</summary>
    public bool IsSloped(int place, int end) => place < _stretches[_stretchAt[place]].FullFrom || end > _stretches[_stretchAt[place]].FullTo;

    /// <summary>The next stretch's start, or the run's end.</summary>
    public int Next(int place) => _next[place];
}
