using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Reinforcement;
using IfcCourser.Units;

namespace IfcCourser.Tests.Reinforcement;

public sealed class BeamSpacingTests
{
    /// <summary>Against every choice of up to ten courses.</summary>
    [Fact]
    public void The_courses_chosen_are_the_best_of_all_choices() => Gen
        .Select(Gen.Select(Gen.Int[1, 6], Gen.Int[0, 3]).Array[0, 10], Gen.Int[1, 20], Gen.Int[1, 6])
        .ForAll(
            (steps, spacing, rest) =>
            {
                var heights = new List<(Length Height, int Interrupted)>();
                foreach (var (step, interrupted) in steps)
                {
                    heights.Add((Length.FromMm((heights.Count == 0 ? 0 : heights[^1].Height.Mm) + step), interrupted));
                }

                var to = Length.FromMm((heights.Count == 0 ? 0 : heights[^1].Height.Mm) + rest);
                var all = Enumerable.Range(0, 1 << heights.Count).Select(mask => Enumerable.Range(0, heights.Count).Where(i => (mask >> i & 1) == 1).ToImmutableArray());
                var chosen = BeamSpacing.Choose(heights, Length.Zero, to, Length.FromMm(spacing));
                Assert.Equal(all.Min(choice => Cost(choice, heights, to, spacing)), Cost(chosen, heights, to, spacing));
            },
            cases: 500);

    private static (int TooFar, int Beams, int Interrupted, double LargestGap) Cost(ImmutableArray<int> choice, List<(Length Height, int Interrupted)> heights, Length to, int spacing)
    {
        var gaps = choice.Select(i => heights[i].Height.Mm).Append(to.Mm).Zip(choice.Select(i => heights[i].Height.Mm).Prepend(0), (high, low) => high - low).ToList();
        return (gaps.Count(gap => gap > spacing), choice.Length, choice.Sum(i => heights[i].Interrupted), gaps.Max());
    }
}
