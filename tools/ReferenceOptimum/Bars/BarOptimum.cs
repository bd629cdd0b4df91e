using Google.OrTools.Sat;

namespace ReferenceOptimum.Bars;

/// <summary>The best bars of a wall by the constraint solver: one aim after the other, each kept while the next is sought.</summary>
internal static class BarOptimum
{
    /// <param name="task">Where bars may stand.</param>
    /// <param name="effort">Deterministic time for each aim.</param>
    /// <returns>The best bars found; null where their being the best is not proven.</returns>
    public static IReadOnlyList<BarOption>? Solve(BarTask task, double effort)
    {
        var model = new CpModel();
        var bars = task.Options.Select((_, i) => model.NewBoolVar($"bar{i}")).ToArray();
        var unmet = task.Needs.Select((_, need) =>
        {
            var missing = model.NewBoolVar($"unmet{need}");
            model.AddBoolOr([.. Serving(task, bars, need), missing]);
            return missing;
        }).ToArray();
        var gaps = task.Rows.SelectMany(row => Gaps(model, task, bars, row)).ToArray();
        LinearExpr[] aims =
        [
            LinearExpr.Sum(unmet),
            LinearExpr.Sum(gaps),
            LinearExpr.WeightedSum(bars, task.Options.Select(option => (long)option.OnJoint)),
            LinearExpr.Sum(bars),
        ];
        IReadOnlyList<BarOption>? best = null;
        foreach (var aim in aims)
        {
            model.Minimize(aim);
            using var solver = new CpSolver();
            solver.StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{effort}");
            if (solver.Solve(model) != CpSolverStatus.Optimal)
            {
                return null;
            }

            best = [.. task.Options.Where((_, i) => solver.BooleanValue(bars[i]))];
            model.Add(aim == (long)Math.Round(solver.ObjectiveValue));
        }

        return best;
    }

    private static IEnumerable<ILiteral> Serving(BarTask task, BoolVar[] bars, int need) =>
        Enumerable.Range(0, bars.Length).Where(i => task.Options[i].Serves.Contains(need)).Select(i => bars[i]);

    /// <summary>A literal for each place of a row: true where a bar stands, another one stands further on, and none within the spacing.</summary>
    private static List<BoolVar> Gaps(CpModel model, BarTask task, BoolVar[] bars, BarRow row)
    {
        var options = Enumerable.Range(0, bars.Length).Where(i => row.Holds(task.Options[i])).ToList();
        var gaps = new List<BoolVar>(options.Count);
        var more = model.FalseLiteral();
        var further = new ILiteral[options.Count + 1];
        var sums = new IntVar[options.Count + 1];
        further[^1] = more;
        sums[0] = model.NewConstant(0);
        for (var i = options.Count - 1; i >= 0; i--)
        {
            var any = model.NewBoolVar($"from{row.Height}-{i}");
            model.AddImplication(bars[options[i]], any);
            model.AddImplication(further[i + 1], any);
            model.AddBoolOr([bars[options[i]], further[i + 1], any.Not()]);
            further[i] = any;
        }

        for (var i = 0; i < options.Count; i++)
        {
            sums[i + 1] = model.NewIntVar(0, options.Count, $"sum{row.Height}-{i}");
            model.Add(sums[i + 1] == sums[i] + bars[options[i]]);
        }

        for (var i = 0; i < options.Count; i++)
        {
            var reach = task.Options[options[i]].At2 + task.Spacing2;
            var last = options.FindLastIndex(other => task.Options[other].At2 <= reach);
            if (last < options.Count - 1)
            {
                var gap = model.NewBoolVar($"gap{row.Height}-{i}");
                model.Add(sums[last + 1] - sums[i + 1] + gap >= 1).OnlyEnforceIf([bars[options[i]], further[last + 1]]);
                gaps.Add(gap);
            }
        }

        return gaps;
    }
}
