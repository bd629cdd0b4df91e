using Google.OrTools.Sat;

namespace ReferenceOptimum.Solving;

/// <summary>Runs the constraint solver: one worker and deterministic time, so that every run finds the same.</summary>
internal static class Search
{
    /// <returns>The best bond found, if any; and the aim's proven least value, null where no bond exists.</returns>
    public static (BlockBond? Bond, int? Bound) Minimise(BlockModel model, LinearExpr aim, double effort)
    {
        using var solver = new CpSolver();
        var (status, bound) = Solve(solver, model.Model, aim, effort);
        return (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? model.Bond(solver) : null, bound);
    }

    /// <summary>An aim's proven least value; null where nothing fulfils the model.</summary>
    public static int? Least(CpModel model, LinearExpr aim, double effort)
    {
        using var solver = new CpSolver();
        return Solve(solver, model, aim, effort).Bound;
    }

    private static (CpSolverStatus Status, int? Bound) Solve(CpSolver solver, CpModel model, LinearExpr aim, double effort)
    {
        model.Minimize(aim);
        solver.StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{effort}");
        var status = solver.Solve(model);
        return (status, status is CpSolverStatus.Infeasible ? null : Math.Max(0, (int)Math.Ceiling(solver.BestObjectiveBound - 1e-6)));
    }
}
