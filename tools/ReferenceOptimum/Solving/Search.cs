using Google.OrTools.Sat;

namespace ReferenceOptimum.Solving;

/// <summary>Runs the constraint solver: one worker and deterministic time, so that every run finds the same.</summary>
internal static class Search
{
    /// <returns>The best bond found, if any; and the aim's proven least value, null where no bond exists.</returns>
    public static (BlockBond? Bond, int? Bound) Minimise(BlockModel model, LinearExpr aim, double effort)
    {
        model.Model.Minimize(aim);
        using var solver = new CpSolver();
        solver.StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{effort}");
        var status = solver.Solve(model.Model);
        var bound = status is CpSolverStatus.Infeasible ? (int?)null : Math.Max(0, (int)Math.Ceiling(solver.BestObjectiveBound - 1e-6));
        return (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? model.Bond(solver) : null, bound);
    }
}
