using IfcCourser.Rules;
using ReferenceOptimum.Walls;

namespace ReferenceOptimum.Bars;

/// <summary>Prints each wall's bars beside the reference's, then what all walls say.</summary>
internal static class BarReport
{
    /// <returns>Exit status: 0 where no wall has a broken rule that can be avoided, a bar too many or a breach that no finding names.</returns>
    public static int Print(Options options, TextWriter to)
    {
        var comparison = new BarComparison(options.Effort, options.IsLong);
        var sources = options.Folder.Length > 0
            ? ModelWalls.In(options.Folder, BuiltInRuleSets.Get("us"))
            : Enumerable.Range(options.From, options.Count).Select(number => BarWallMaker.Make(options.Seed, number));
        var results = new List<BarResult>();
        foreach (var result in sources.SelectMany(source => comparison.Of(source.Name, source.Model, source.Rules)).Take(options.Count))
        {
            results.Add(result);
            to.WriteLine(result);
            foreach (var line in result.Details)
            {
                to.WriteLine(line);
            }
        }

        var decided = results.Where(result => result.Best is not null).ToList();
        to.WriteLine($"{results.Count} walls with bars, {comparison.NotJudged} more not judged (curved, slanted or sloped, or without cores)");
        to.WriteLine($"best known of {decided.Count}, ours equal in {decided.Count(result => result.Ours == result.Best)}, undecided {results.Count - decided.Count}; "
            + $"bars ours {decided.Sum(result => result.Ours.Bars)}, best {decided.Sum(result => result.Best!.Value.Bars)}; on joints ours {decided.Sum(result => result.Ours.OnJoint)}, best {decided.Sum(result => result.Best!.Value.OnJoint)}; "
            + $"gaps ours {decided.Sum(result => result.Ours.Gaps)}, best {decided.Sum(result => result.Best!.Value.Gaps)}; unmet ours {decided.Sum(result => result.Ours.Unmet)}, best {decided.Sum(result => result.Best!.Value.Unmet)}");
        var holds = results.Count > 0 && !results.Exists(result => result.IsWorse || result.IsReferenceWrong);
        to.WriteLine(holds ? "the bars hold against the reference" : "the bars do not hold against the reference");
        return holds ? 0 : 1;
    }
}
