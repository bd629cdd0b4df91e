using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Walls;
using ReferenceOptimum.Problems;
using ReferenceOptimum.Solving;

namespace ReferenceOptimum.Reports;

/// <summary>Lays walls out and holds each bond to the reference.</summary>
internal sealed class WallComparison(BlockSolver solver, bool isLong)
{
    /// <param name="name">Of the model.</param>
    /// <param name="model">Walls and how they meet.</param>
    /// <param name="rules">Catalog and rules.</param>
    public IEnumerable<WallResult> Of(string name, WallModel model, LayoutRules rules)
    {
        var layout = LayoutBuilder.Build(model, rules, new ModelFacts(name, new string('0', 64), "IFC4", 1, null, null, "2026-01-01"));
        return layout.Walls.Select(wall => Of(name, wall, layout, model));
    }

    private WallResult Of(string name, WallLayout wall, Layout layout, WallModel model)
    {
        var (problem, bond) = ProblemReader.Read(wall, layout, model);
        var (ours, found, least) = (default(BondCount), default(BondCount), default(BondCount));
        var details = new List<string>();
        foreach (var block in Blocks.Of(problem))
        {
            var given = BlockBond.Of(block, bond);
            var optimum = solver.Solve(block, given);
            var count = BlockCount.Of(block, given);
            (ours, found, least) = (ours + count, found + optimum.Found, least + optimum.Least);
            if (count != optimum.Least)
            {
                details.AddRange(WallDetails.Of(block, given, optimum, isLong));
            }
        }

        var size = $"{wall.Identity.GlobalId} {wall.Frame.Length.Mm:0.#} mm x {wall.Courses.Length} courses, {wall.Frame.Thickness.Mm:0.#} thick, "
            + $"{wall.Openings.Count(opening => opening.Interrupts)} openings, {problem.Bars.Length} bars";
        return new WallResult($"{name} {layout.Rules.Catalog.Name}/{layout.Rules.Set.Name}", size, bond.Courses.Sum(course => course.Sum(run => run.Length)), ours, found, least, details);
    }
}
