using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>Counts a bond of a block from its pieces; what stands whatever is laid is left out.</summary>
internal static class BlockCount
{
    public static BondCount Of(Block block, BlockBond bond)
    {
        var (sizes, runs) = (block.Sizes, bond.Runs);
        var joints = runs.Select(run => BondCount.Inner([run]).ToList()).ToList();
        var (breaches, bearings) = (0, 0);
        for (var a = 0; a < joints.Count; a++)
        {
            var stretch = block.Stretches[a];
            breaches += joints[a].Sum(joint => stretch.Near2.Count(near => Math.Abs(near - joint) < 2 * sizes.Lap));
            for (var b = 0; b < joints.Count; b++)
            {
                breaches += block.Stretches[b].Course != stretch.Course + 1 ? 0
                    : joints[a].Sum(joint => joints[b].Count(other => Math.Abs(other - joint) < 2 * sizes.Lap));
            }
        }

        breaches += runs.SelectMany(run => run).Count(piece => piece.Size < sizes.LeastPiece);
        for (var b = 0; b < block.Bars.Length; b++)
        {
            var (from2, to2) = (bond.Bars2[b] - (2 * sizes.Clearance), bond.Bars2[b] + (2 * sizes.Clearance));
            breaches += block.Bars[b].Courses.Count(c => Within(c.Course, from2, to2) || c.Fixed2.Any(joint => joint > from2 && joint < to2));
        }

        bearings += block.Stretches.SelectMany(stretch => stretch.Bearings).Distinct().Count(bearing => Within(bearing.Course, bearing.From2, bearing.To2));
        return new BondCount(breaches, bearings, runs.Select((run, i) => run.Count(piece => block.Stretches[i].Run.IsCut(piece, sizes))).Sum());

        bool Within(int course, long from2, long to2) => joints.Where((_, i) => block.Stretches[i].Course == course)
            .Any(run => run.Exists(joint => joint > from2 && joint < to2));
    }

    /// <summary>Why a bond is none: what is not filled, too long or no joint; null where all is well.</summary>
    public static string? Faults(Block block, BlockBond bond)
    {
        for (var i = 0; i < bond.Runs.Length; i++)
        {
            var (stretch, run) = (block.Stretches[i], bond.Runs[i]);
            if (run[0].From != stretch.From || run[^1].To != stretch.To)
            {
                return $"course {stretch.Course + 1} is not closed";
            }

            if (stretch.Run.IsShort(run[0], run[^1]))
            {
                return $"course {stretch.Course + 1} has a piece that is too short under a slope";
            }

            if (run.Any(piece => piece.Size <= 0 || piece.Size > block.Sizes.Unit))
            {
                return $"course {stretch.Course + 1} has a piece that is none";
            }

            if (run.Length > 1 && run.Any(piece => !block.Sizes.IsUncut(piece.Size) && piece.Size % block.Sizes.Grid != 0))
            {
                return $"course {stretch.Course + 1} has a piece off the cut grid";
            }

            if (run.Zip(run.Skip(1), (left, right) => right.From - left.To).Any(joint => joint < block.Sizes.JointMin || joint > block.Sizes.JointMax))
            {
                return $"course {stretch.Course + 1} has a gap that is no joint";
            }
        }

        return null;
    }
}
