namespace ReferenceOptimum.Solving;

/// <summary>
/// The least cuts of a block that its windows leave possible: every course has some number of cuts, such that each window has
/// as many as it needs and each two neighbouring courses have counts they can have together.
/// </summary>
internal sealed class ChainBound(int first, int last, int most)
{
    private readonly int[,] _least = new int[last - first + 1, Windows.Widest + 1];
    private readonly CutPairs[] _pairs = [.. Enumerable.Repeat(CutPairs.All, last - first + 1)];

    public void Add(Window window) => _least[window.Last - first, window.Last - window.First + 1] = window.Least;

    /// <summary>Counts that a course can have together with the one above it.</summary>
    public void Add(int lower, CutPairs pairs) => _pairs[lower - first] = pairs;

    /// <summary>The least sum of all counts; the given most where there is none below it.</summary>
    public int Least()
    {
        // Least sum so far, by the cuts of the course before and of the course itself.
        var sums = new int[most + 1, most + 1];
        for (var course = 0; course <= last - first; course++)
        {
            var next = new int[most + 1, most + 1];
            for (var own = 0; own <= most; own++)
            {
                for (var before = 0; before <= most; before++)
                {
                    next[before, own] = own + Enumerable.Range(0, course == 0 ? 1 : most + 1)
                        .Where(second => May(course, second, before, own)).Select(second => sums[second, before]).DefaultIfEmpty(most).Min();
                }
            }

            sums = next;
        }

        return Math.Min(most, sums.Cast<int>().Min());
    }

    private bool May(int course, int second, int before, int own) =>
        own >= _least[course, 1]
        && (course == 0 ? before == 0 : before + own >= _least[course, 2] && _pairs[course - 1].Allow(before, own))
        && (course == 0 || second + before + own >= _least[course, 3]);
}
