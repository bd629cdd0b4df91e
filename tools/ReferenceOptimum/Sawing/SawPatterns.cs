using System.Collections.Immutable;

namespace ReferenceOptimum.Sawing;

/// <summary>All ways to fill a length with sizes, a kerf between two, so that none of those left over fits in any more.</summary>
internal static class SawPatterns
{
    /// <param name="sizes">With how many there are of each.</param>
    /// <param name="room">What they share.</param>
    /// <param name="kerf">Between two.</param>
    /// <returns>How many of each size a way takes.</returns>
    public static ImmutableArray<ImmutableArray<int>> Of(ImmutableArray<(long Size, int Count)> sizes, long room, long kerf)
    {
        var patterns = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        Fill(0, new int[sizes.Length], room + kerf);
        return patterns.ToImmutable();

        void Fill(int next, int[] taken, long left)
        {
            if (next == sizes.Length)
            {
                if (!sizes.Where((size, i) => taken[i] < size.Count && size.Size + kerf <= left).Any())
                {
                    patterns.Add([.. taken]);
                }

                return;
            }

            for (var count = 0; count <= sizes[next].Count && count * (sizes[next].Size + kerf) <= left; count++)
            {
                taken[next] = count;
                Fill(next + 1, taken, left - (count * (sizes[next].Size + kerf)));
            }

            taken[next] = 0;
        }
    }
}
