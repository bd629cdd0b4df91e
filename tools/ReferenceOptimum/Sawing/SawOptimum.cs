using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace ReferenceOptimum.Sawing;

/// <summary>
/// The fewest units as a program of patterns (Gilmore and Gomory 1961, 1965): how often each way to fill a strip is sawn, how often each way to
/// divide a unit into strips, so that all pieces come out. A strip holds pieces of one height. Every pattern is in the program, so its
/// optimum is the true one; the constraint solver proves it or gives a bound.
/// </summary>
internal static class SawOptimum
{
    /// <returns>Units of the best plan found, or null; and how many are needed at least.</returns>
    public static (int? Found, int Least) Of(SawProblem problem, double effort)
    {
        var model = new CpModel();
        var most = problem.Pieces.Length;
        var heights = problem.Pieces.GroupBy(piece => piece.Height).Select(group => (Height: group.Key, Pieces: group.ToArray())).ToArray();
        var strips = new List<LinearExpr>();
        foreach (var (_, pieces) in heights)
        {
            var sizes = pieces.GroupBy(piece => piece.Length).Select(group => (group.Key, group.Count())).ToImmutableArray();
            var ways = SawPatterns.Of(sizes, problem.Length, problem.Kerf).Select(pattern => (Pattern: pattern, Times: model.NewIntVar(0, pieces.Length, ""))).ToArray();
            for (var size = 0; size < sizes.Length; size++)
            {
                model.Add(LinearExpr.WeightedSum(ways.Select(way => way.Times), ways.Select(way => way.Pattern[size])) >= sizes[size].Item2);
            }

            strips.Add(LinearExpr.Sum(ways.Select(way => way.Times)));
        }

        var units = SawPatterns.Of([.. heights.Select(height => (height.Height, height.Pieces.Length))], problem.Height, problem.Kerf)
            .Select(pattern => (Pattern: pattern, Times: model.NewIntVar(0, most, ""))).ToArray();
        for (var height = 0; height < heights.Length; height++)
        {
            model.Add(LinearExpr.WeightedSum(units.Select(unit => unit.Times), units.Select(unit => unit.Pattern[height])) >= strips[height]);
        }

        model.Minimize(LinearExpr.Sum(units.Select(unit => unit.Times)));
        using var solver = new CpSolver();
        solver.StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{effort}");
        var status = solver.Solve(model);
        return (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? (int)Math.Round(solver.ObjectiveValue) : null, (int)Math.Ceiling(solver.BestObjectiveBound - 1e-6));
    }
}
