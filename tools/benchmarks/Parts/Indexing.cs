using System.IO.MemoryMappedFiles;
using BenchmarkDotNet.Attributes;
using IfcCourser.Step21;

namespace PartsBenchmark;

/// <summary>Indexing a model beside what a disk and a memory can do at most.</summary>
public class Indexing
{
    private string _copy = "";

    public static string Model { get; set; } = "";

    [GlobalSetup]
    public void Setup() => _copy = Path.Combine(Path.GetTempPath(), $"parts-benchmark-{Environment.ProcessId}.ifc");

    [GlobalCleanup]
    public void Cleanup() => File.Delete(_copy);

    [Benchmark(Baseline = true)]
    public long CountNewlines()
    {
        using var file = MemoryMappedFile.CreateFromFile(Model, FileMode.Open, null, 0, MemoryMappedFileAccess.Read);
        using var view = file.CreateViewStream(0, 0, MemoryMappedFileAccess.Read);
        var length = new FileInfo(Model).Length;
        var count = 0L;
        const int Window = 1 << 30;
        for (var from = 0L; from < length; from += Window)
        {
            count += Span(view, from, (int)Math.Min(Window, length - from)).Count((byte)'\n');
        }

        return count;
    }

    [Benchmark]
    public int Index()
    {
        using var file = StepFile.Open(Model).Value ?? throw new InvalidOperationException("the model can't be read");
        return file.Count;
    }

    [Benchmark]
    public void Copy() => File.Copy(Model, _copy, overwrite: true);

    private static unsafe ReadOnlySpan<byte> Span(MemoryMappedViewStream view, long from, int length)
    {
        byte* start = null;
        view.SafeMemoryMappedViewHandle.AcquirePointer(ref start);
        return new ReadOnlySpan<byte>(start + view.PointerOffset + from, length);
    }
}
