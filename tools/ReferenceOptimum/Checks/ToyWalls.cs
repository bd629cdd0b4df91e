using System.Collections.Immutable;
using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Checks;

/// <summary>
/// Blocks small enough to try every filling, on a grid of 10 mm: unit 60 or 70, joints 10 to 20, least piece 20, lap 20, with or
/// without a part of 30; two or three courses, joints beside them, bars and bearings at random.
/// </summary>
internal static class ToyWalls
{
    private const long Cell = 10_000_000;

    public static Block Make(int seed, int number)
    {
#pragma warning disable CA5394 // Do not use insecure randomness: the walls shall be the same each time.
        var random = new Random((seed * 100_003) + number);
        int Next(int least, int most) => random.Next(least, most + 1);
#pragma warning restore CA5394
        var sizes = new BondSizes(
            Next(6, 7) * Cell, Next(0, 1) == 0 ? [] : [3 * Cell], 2 * Cell, Cell, Next(1, 2) * Cell, 2 * Cell, Next(1, 2) * Cell, 40 * Cell, Cell);
        var courses = Next(2, 3);
        var stretches = ImmutableArray.CreateBuilder<BlockStretch>();
        for (var course = 0; course < courses; course++)
        {
            var (from, to) = (Next(0, 2), Next(8, 13));
            var split = Next(0, 3) == 0 && to > 10 ? Next(from + 3, to - 5) : 0;
            stretches.Add(Stretch(course, 0, from, split == 0 ? to : split));
            if (split > 0)
            {
                stretches.Add(Stretch(course, 1, split + Next(1, 3), to));
            }
        }

        var bars = Enumerable.Range(0, Next(0, 2)).Select(number => Bar(number, Next(1, 5) + (6 * number), Next(0, 4))).ToImmutableArray();
        return new Block(sizes, stretches.ToImmutable(), bars);

        BlockStretch Stretch(int course, int index, int from, int to) => new(
            course, index, new Run(from * Cell, to * Cell, Slope(to - from), Slope(to - from)),
            [.. Enumerable.Range(0, Next(0, 1)).Select(_ => Next(2 * from, 2 * to) * Cell)],
            [.. Enumerable.Range(0, Next(0, 3) / 3).Select(_ => Next(from, to)).Select(at => new BearingProblem(course, 2 * at * Cell, 2 * (at + 3) * Cell))]);

        Rake Slope(int size) => Next(0, 3) > 0 ? default : new Rake(Next(1, 7) * Cell, Math.Min(Next(0, 5), size * Cell <= sizes.Unit ? size : size / 2) * Cell);

        BlockBar Bar(int number, int at, int play) => new(
            number, 2 * at * Cell, 2 * (at + play) * Cell, number == 0 ? null : 0, [.. Enumerable.Range(0, courses).Select(course => (course, ImmutableArray<long>.Empty))]);
    }
}
