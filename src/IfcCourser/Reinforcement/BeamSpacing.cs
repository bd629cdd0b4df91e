using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>
/// Chooses courses for the bond beams that the largest spacing asks for between two heights: the fewest gaps over the limit, then
/// the fewest beams, then the fewest openings that interrupt them, then the least largest gap, then the lowest. Exact, by dynamic
/// programming from below.
/// </summary>
internal static class BeamSpacing
{
    /// <param name="candidates">Heights of courses that may be beams, rising, and how many openings interrupt each.</param>
    /// <param name="from">A beam or the foundation below.</param>
    /// <param name="to">A beam or the wall's end above.</param>
    /// <param name="spacing">Largest distance.</param>
    /// <returns>Indices of the courses chosen, rising.</returns>
    public static ImmutableArray<int> Choose(IReadOnlyList<(Length Height, int Interrupted)> candidates, Length from, Length to, Length spacing)
    {
        var best = new Way[candidates.Count];
        for (var i = 0; i < candidates.Count; i++)
        {
            best[i] = Reaching(i, candidates[i].Height, candidates[i].Interrupted);
        }

        var chosen = ImmutableArray.CreateBuilder<int>();
        for (var at = Reaching(candidates.Count, to, 0).Before; at >= 0; at = best[at].Before)
        {
            chosen.Insert(0, at);
        }

        return chosen.ToImmutable();

        Way Reaching(int end, Length height, int interrupted)
        {
            var least = new Way(height - from > spacing ? 1 : 0, 0, interrupted, height - from, -1);
            for (var before = 0; before < end; before++)
            {
                var way = best[before];
                var gap = height - candidates[before].Height;
                var longer = new Way(way.TooFar + (gap > spacing ? 1 : 0), way.Beams + 1, way.Interrupted + interrupted, Length.Max(way.LargestGap, gap), before);
                least = longer.CompareTo(least) < 0 ? longer : least;
            }

            return least;
        }
    }

    private readonly record struct Way(int TooFar, int Beams, int Interrupted, Length LargestGap, int Before) : IComparable<Way>
    {
        public int CompareTo(Way other) =>
            (TooFar, Beams, Interrupted, LargestGap).CompareTo((other.TooFar, other.Beams, other.Interrupted, other.LargestGap));
    }
}
