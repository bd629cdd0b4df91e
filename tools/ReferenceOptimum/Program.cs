using System.Globalization;
using ReferenceOptimum;
using ReferenceOptimum.Bars;
using ReferenceOptimum.Checks;
using ReferenceOptimum.Reports;
using ReferenceOptimum.Sawing;
using ReferenceOptimum.Solving;
using ReferenceOptimum.Walls;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (Options.Read(args) is not { } options)
{
    Console.Error.WriteLine(Options.Usage);
    return 2;
}

if (options.Verb == Verb.SelfCheck)
{
    var faults = SelfCheck.Faults(options.Seed, options.Count).ToList();
    faults.ForEach(Console.WriteLine);
    Console.WriteLine($"{options.Count} toy walls, {faults.Count} faults of the reference");
    return faults.Count == 0 ? 0 : 1;
}

if (options.Verb == Verb.Bars)
{
    return BarReport.Print(options, Console.Out);
}

if (options.Verb == Verb.Saw)
{
    return SawComparison.Holds(options.Seed, options.From, options.Count, options.Effort) ? 0 : 1;
}

var comparison = new WallComparison(new BlockSolver(options.Effort), options.IsLong);
var sources = options.Verb == Verb.Models
    ? ModelWalls.In(options.Folder)
    : Enumerable.Range(options.From, options.Count).Select(number => WallMaker.Make(options.Seed, number, options.AreGables));
var results = new List<WallResult>();
foreach (var result in sources
    .Where(source => options.Set.Length == 0 || $"{source.Rules.Catalog.Name}/{source.Rules.Set.Name}" == options.Set)
    .SelectMany(source => comparison.Of(source.Name, source.Model, source.Rules).Take(options.Each))
    .Take(options.Verb == Verb.Models ? options.Count : int.MaxValue))
{
    results.Add(result);
    Console.WriteLine(result);
    foreach (var line in result.Details)
    {
        Console.WriteLine(line);
    }
}

var distribution = new Distribution(results);
foreach (var line in distribution.Lines())
{
    Console.WriteLine(line);
}

return distribution.Holds ? 0 : 1;
