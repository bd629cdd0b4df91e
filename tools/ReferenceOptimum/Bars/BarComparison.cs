using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Walls;

namespace ReferenceOptimum.Bars;

/// <summary>Lays walls out and holds the places of their bars to the reference, the courses given.</summary>
internal sealed class BarComparison(double effort, bool isLong)
{
    /// <summary>Walls whose bars the reference can't state: curved, slanted or sloped ones, and those without cores.</summary>
    public int NotJudged { get; private set; }

    public IEnumerable<BarResult> Of(string name, WallModel model, LayoutRules rules)
    {
        var layout = LayoutBuilder.Build(model, rules, new ModelFacts(name, new string('0', 64), "IFC4", 1, null, null, "2026-01-01"));
        foreach (var wall in layout.Walls)
        {
            if (CanJudge(wall, rules))
            {
                yield return Of(name, wall, layout, model);
            }
            else
            {
                NotJudged++;
            }
        }
    }

    private static bool CanJudge(WallLayout wall, LayoutRules rules) => rules.Set.Bars is { Given.IsEmpty: true } && wall.Frame.Curve is null
        && wall.Wall.Start.Slant == default && wall.Wall.End.Slant == default && WallElevation.IsUpright(wall)
        && !BarNeeds.HasNoCores(wall);

    private BarResult Of(string name, WallLayout wall, Layout layout, WallModel model)
    {
        var task = BarTaskReader.Read(wall, layout, model);
        var best = BarOptimum.Solve(task, effort);
        var ours = BarCount.Of(task, task.Given);
        var count = best is null ? (BarCount?)null : BarCount.Of(task, best);
        var details = isLong || (count is { } reference && ours != reference) ? Details(task, best ?? []) : [];
        return new BarResult(
            $"{name} {layout.Rules.Catalog.Name}/{layout.Rules.Set.Name} {wall.Identity.GlobalId} {wall.Frame.Length.Mm:0.#} mm x {wall.Courses.Length} courses, {task.Options.Length} options",
            ours, count, wall.Findings.Count(finding => finding.Code == FindingCodes.CoreOnJoint), Unsaid(task, wall), details);
    }

    /// <summary>Needs that no bar meets and no finding names.</summary>
    private static int Unsaid(BarTask task, WallLayout wall) => Enumerable.Range(0, task.Needs.Length)
        .Where(need => !task.Given.Any(bar => bar.Serves.Contains(need)))
        .Count(need => !wall.Findings.Any(finding => finding.Code == FindingCodes.CoreNotPossible && finding.At?.S is { } at
            && 2 * at.Nanometres >= task.Needs[need].From2 - 2 && 2 * at.Nanometres <= task.Needs[need].To2 + 2));


    private static List<string> Details(BarTask task, IReadOnlyCollection<BarOption> best) =>
    [
        $"    needs {string.Join(", ", task.Needs.Select(need => $"{need.From2 / 2e6:0.##}..{need.To2 / 2e6:0.##} at {need.Bottom / 1e6:0.#}..{need.Top / 1e6:0.#}"))}; spacing {task.Spacing2 / 2e6:0.##}",
        $"    rows with gaps {string.Join(", ", task.Rows.Where(row => BarCount.GapsIn(row, task.Given, task.Spacing2) > 0).Select(row => $"{row.From2 / 2e6:0.##}..{row.To2 / 2e6:0.##} at {row.Height / 1e6:0.#}"))}",
        $"    ours {Places(task.Given)}",
        $"    best {Places(best)}",
    ];

    private static string Places(IEnumerable<BarOption> bars) =>
        string.Join(", ", bars.OrderBy(bar => bar.At2).Select(bar => $"{bar.At2 / 2e6:0.##} ({bar.From / 1e6:0.#}..{bar.To / 1e6:0.#}{(bar.OnJoint > 0 ? $", {bar.OnJoint} on joints" : "")})"));
}
