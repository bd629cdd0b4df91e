using System.Collections.Immutable;
using ReferenceOptimum.Problems;
using ReferenceOptimum.Solving;

namespace ReferenceOptimum.Reports;

/// <summary>Our bond and the reference's of a block, course by course.</summary>
internal static class WallDetails
{
    public static IEnumerable<string> Of(Block block, BlockBond ours, BlockOptimum optimum, bool isLong)
    {
        yield return $"    courses {block.FirstCourse + 1} to {block.LastCourse + 1}, {Mm(2 * block.Stretches.Min(s => s.From))} to {Mm(2 * block.Stretches.Max(s => s.To))}: "
            + $"ours {BlockCount.Of(block, ours)}, found {optimum.Found}, least {optimum.Least}";
        for (var b = 0; b < block.Bars.Length && isLong; b++)
        {
            yield return $"      bar in {Mm(block.Bars[b].Least2)} to {Mm(block.Bars[b].Most2)}: ours {Mm(ours.Bars2[b])}, found {Mm(optimum.Bond.Bars2[b])}";
        }

        for (var course = block.LastCourse; course >= block.FirstCourse && isLong; course--)
        {
            var runs = Enumerable.Range(0, block.Stretches.Length).Where(i => block.Stretches[i].Course == course).ToList();
            yield return $"      {course + 1,2} ours  {string.Join(" | ", runs.Select(i => Row(ours.Runs[i], block.Sizes)))}";
            yield return $"         found {string.Join(" | ", runs.Select(i => Row(optimum.Bond.Runs[i], block.Sizes)))}";
            yield return $"         joints beside {string.Join(" ", runs.SelectMany(i => block.Stretches[i].Near2).Select(Mm))}"
                + $" bearings {string.Join(" ", runs.SelectMany(i => block.Stretches[i].Bearings).Select(b => $"{Mm(b.From2)}-{Mm(b.To2)}"))}";
        }
    }

    private static string Row(ImmutableArray<Stretch> run, BondSizes sizes) =>
        $"[{Mm(2 * run[0].From)}] {string.Join(" ", run.Select(piece => piece.Size == sizes.Unit ? "U" : sizes.IsUncut(piece.Size) ? "P" : Mm(2 * piece.Size)))} [{Mm(2 * run[^1].To)}]";

    private static string Mm(long doubled) => $"{doubled / 2e6:0.##}";
}
