using BenchmarkDotNet.Attributes;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Output.IfcWriteBack;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Walls;

namespace PartsBenchmark;

/// <summary>Writing the coursed model, laid out as it is given, beside copying the file.</summary>
public class WritingBack
{
    private string _written = "";
    private IfcModel? _model;
    private Layout? _layout;

    public static string Model { get; set; } = "";

    [GlobalSetup]
    public void Setup()
    {
        _written = Path.Combine(Path.GetTempPath(), $"parts-benchmark-{Environment.ProcessId}.coursed.ifc");
        _model = IfcModel.Open(Model).Value ?? throw new InvalidOperationException("the model can't be read");
        var (catalog, set) = (BuiltInCatalogs.Get("aac-mm"), BuiltInRuleSets.Get("eu"));
        var walls = UniqueIds.Of(WallReader.Read(_model, new WallSelection(), catalog, set));
        var facts = new ModelFacts(_model.FileName, _model.Sha256, _model.SchemaName, _model.Units.LengthMm, _model.ProjectId, _model.ProjectName, _model.TimeStamp);
        _layout = LayoutBuilder.Build(walls, LayoutRules.For(set, catalog, OpeningPolicy.Move), facts);
        Console.WriteLine($"{_layout.Walls.Length} walls laid out, {_layout.Skipped.Length} not");
    }

    [GlobalCleanup]
    public void Cleanup()
    {
        _model?.Dispose();
        File.Delete(_written);
    }

    [Benchmark(Baseline = true)]
    public void Copy() => File.Copy(Model, _written, overwrite: true);

    [Benchmark]
    public void WriteCoursed()
    {
        using var stream = new FileStream(_written, FileMode.Create, FileAccess.Write);
        IfcWriteBack.Write(_model!, _layout!, stream);
    }
}
