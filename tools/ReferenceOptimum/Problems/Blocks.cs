using System.Collections.Immutable;

namespace ReferenceOptimum.Problems;

/// <summary>Divides a wall's problem into blocks that can be solved each on its own.</summary>
internal static class Blocks
{
    public static ImmutableArray<Block> Of(BondProblem problem)
    {
        var stretches = problem.Courses.SelectMany((course, c) => course.Runs.Select((run, i) => StretchOf(problem, c, i, run))).ToList();
        var bars = problem.Bars.Select((bar, number) => BarOf(problem, bar, number)).ToList();
        var group = Enumerable.Range(0, stretches.Count).ToArray();
        for (var a = 0; a < stretches.Count; a++)
        {
            for (var b = a + 1; b < stretches.Count; b++)
            {
                if (Touch(stretches[a], stretches[b], bars, problem.Sizes))
                {
                    var (from, to) = (group[b], group[a]);
                    for (var i = 0; i < group.Length; i++)
                    {
                        group[i] = group[i] == from ? to : group[i];
                    }
                }
            }
        }

        return
        [
            .. group.Distinct().Select(g => stretches.Where((_, i) => group[i] == g).ToImmutableArray())
                .Select(members => new Block(problem.Sizes, members, [.. bars.Where(bar => members.Any(s => IsNear(s, bar, problem.Sizes)))])),
        ];
    }

    private static BlockStretch StretchOf(BondProblem problem, int course, int index, Run run)
    {
        var near = new[] { course - 1, course + 1 }
            .Where(c => c >= 0 && c < problem.Courses.Length)
            .SelectMany(c => problem.Courses[c].Edges.Concat(problem.Courses[c].Fixed))
            .Where(joint => joint > 2 * (run.From - problem.Sizes.Lap) && joint < 2 * (run.To + problem.Sizes.Lap))
            .Order();
        var bearings = problem.Bearings.Where(bearing => bearing.Course == course && bearing.To2 > 2 * run.From && bearing.From2 < 2 * run.To);
        return new BlockStretch(course, index, run, [.. near], [.. bearings]);
    }

    private static BlockBar BarOf(BondProblem problem, BarProblem bar, int number)
    {
        var reach = 2 * problem.Sizes.Clearance;
        return new BlockBar(
            number, bar.Least2, bar.Most2, bar.SpacedFrom,
            [
                .. Enumerable.Range(bar.First, bar.Last - bar.First + 1).Select(c => (c, problem.Courses[c].Edges.Concat(problem.Courses[c].Fixed)
                    .Where(joint => joint > bar.Least2 - reach && joint < bar.Most2 + reach).Order().ToImmutableArray())),
            ]);
    }

    private static bool Touch(BlockStretch a, BlockStretch b, List<BlockBar> bars, BondSizes sizes)
    {
        var areNear = a.From - sizes.Lap < b.To && b.From - sizes.Lap < a.To;
        return (Math.Abs(a.Course - b.Course) == 1 && areNear)
            || a.Bearings.Intersect(b.Bearings).Any()
            || bars.Exists(bar => IsNear(a, bar, sizes) && (IsNear(b, bar, sizes)
                || bars.Exists(other => (other.SpacedFrom == bar.Number || bar.SpacedFrom == other.Number) && IsNear(b, other, sizes))));
    }

    private static bool IsNear(BlockStretch stretch, BlockBar bar, BondSizes sizes) => bar.Courses.Any(c => c.Course == stretch.Course)
        && bar.Most2 > 2 * (stretch.From - sizes.Clearance) && bar.Least2 < 2 * (stretch.To + sizes.Clearance);
}
