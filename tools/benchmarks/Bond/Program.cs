using System.Diagnostics;
using System.Globalization;
using BondBenchmark;
using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;

// Bond [CATALOG/RULES] [WALLS ...]: lays out invented houses of so many walls and prints what a piece takes, in processor time,
// and how the time grows. Run it on one core (taskset -c 0) for the figures per core.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var set = args.Length > 0 ? args[0].Split('/') : ["aac-mm", "eu"];
int[] sizes = args.Length > 1 ? [.. args.Skip(1).Select(int.Parse)] : [12, 40, 132, 400];
var rules = LayoutRules.For(BuiltInRuleSets.Get(set[1]), BuiltInCatalogs.Get(set[0]), OpeningPolicy.Move);
WallSketch.LayOut(Houses.Storey(20, rules), rules);
var measured = new List<(double Pieces, double Seconds)>();
Console.WriteLine("  walls   pieces    cut  seconds  pieces/s  broken  MB");
foreach (var walls in sizes)
{
    var model = Houses.Storey(walls, rules);
    GC.Collect();
    var before = Process.GetCurrentProcess().TotalProcessorTime;
    var layout = WallSketch.LayOut(model, rules);
    var seconds = (Process.GetCurrentProcess().TotalProcessorTime - before).TotalSeconds;
    var pieces = layout.Walls.SelectMany(wall => wall.Courses).SelectMany(course => course.Pieces).ToList();
    var broken = layout.Walls.SelectMany(wall => wall.Findings).Count(finding => finding.Code.Id is "overlap-short" or "piece-short" or "core-on-joint");
    var cut = pieces.Count(piece => piece.To - piece.From != rules.Catalog.UnitLength && !rules.Catalog.PartLengths.Contains(piece.To - piece.From));
    measured.Add((pieces.Count, seconds));
    Console.WriteLine($"{walls,7} {pieces.Count,8} {cut,6} {seconds,8:F2} {pieces.Count / seconds,9:F0}  {broken}  {GC.GetTotalMemory(forceFullCollection: true) >> 20}");
}

if (measured.Count > 1)
{
    // Least squares of log time over log pieces.
    var logs = measured.ConvertAll(m => (X: Math.Log(m.Pieces), Y: Math.Log(m.Seconds)));
    var (x, y) = (logs.Average(log => log.X), logs.Average(log => log.Y));
    var exponent = logs.Sum(log => (log.X - x) * (log.Y - y)) / logs.Sum(log => (log.X - x) * (log.X - x));
    Console.WriteLine($"time grows as pieces to the power {exponent:F2}");
}
