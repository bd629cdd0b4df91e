using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using PartsBenchmark;

// Parts MODEL: indexing beside counting newlines and copying, writing a coursed model beside copying it, each with its ratio to the first. The file is in memory then,
// and the code compiled.
if (args is not [var model] || !File.Exists(model))
{
    Console.Error.WriteLine("usage: Parts MODEL.ifc");
    return 2;
}

Indexing.Model = WritingBack.Model = Path.GetFullPath(model);
var folder = Directory.CreateTempSubdirectory("parts-benchmark-");
var config = ManualConfig.CreateEmpty()
    .AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance).WithIterationCount(7))
    .AddDiagnoser(MemoryDiagnoser.Default)
    .AddColumnProvider(DefaultColumnProviders.Instance)
    .AddColumn(StatisticColumn.Min, StatisticColumn.Median, StatisticColumn.Max)
    .AddLogger(ConsoleLogger.Default)
    .WithArtifactsPath(folder.FullName);
Console.WriteLine($"{new FileInfo(model).Length / 1e6:0.0} MB");
var summaries = new[] { BenchmarkRunner.Run<Indexing>(config), BenchmarkRunner.Run<WritingBack>(config) };
folder.Delete(recursive: true);
return summaries.Any(summary => summary.HasCriticalValidationErrors || summary.Reports.Any(report => !report.Success)) ? 1 : 0;
