using System.Diagnostics;
using System.Globalization;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Output.IfcWriteBack;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Walls;

// Write MODEL [RUNS]: lays a model out as it is given, then, in turn in one process, copies the file and writes the coursed model, both to the temporary folder. Prints
// seconds and the ratio of each run; the first is not counted: the file is in memory then, and the code compiled.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var (path, runs) = (args[0], args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 5);
var opened = IfcModel.Open(path);
if (!opened.IsOk)
{
    Console.Error.WriteLine(opened.Fault);
    return 1;
}

using var model = opened.Value;
var (catalog, set) = (BuiltInCatalogs.Get("aac-mm"), BuiltInRuleSets.Get("eu"));
var walls = UniqueIds.Of(WallReader.Read(model, new WallSelection(), catalog, set));
var facts = new ModelFacts(model.FileName, model.Sha256, model.SchemaName, model.Units.LengthMm, model.ProjectId, model.ProjectName, model.TimeStamp);
var layout = LayoutBuilder.Build(walls, LayoutRules.For(set, catalog, OpeningPolicy.Move), facts);
Console.WriteLine($"{new FileInfo(path).Length / 1e6:0.0} MB, {layout.Walls.Length} walls laid out, {layout.Skipped.Length} not, {Environment.ProcessorCount} processors");
var file = Path.Combine(Path.GetTempPath(), $"write-benchmark-{Environment.ProcessId}");
var ratios = new List<double>();
for (var run = 0; run <= runs; run++)
{
    var copying = Timed(() => File.Copy(path, file, overwrite: true));
    var writing = Timed(() =>
    {
        using var stream = new FileStream(file, FileMode.Create, FileAccess.Write);
        IfcWriteBack.Write(model, layout, stream);
    });
    if (run > 0)
    {
        ratios.Add(writing / copying);
        Console.WriteLine($"copied {1000 * copying:0.0} ms, coursed model {1000 * writing:0.0} ms ({writing / copying:0.00} times)");
    }
}

File.Delete(file);
ratios.Sort();
Console.WriteLine($"coursed model to copy: least {ratios[0]:0.00}, median {ratios[ratios.Count / 2]:0.00}, largest {ratios[^1]:0.00}");
return 0;

static double Timed(Action work)
{
    var watch = Stopwatch.StartNew();
    work();
    return watch.Elapsed.TotalSeconds;
}
