using System.Diagnostics;
using System.Globalization;
using System.IO.MemoryMappedFiles;
using IfcCourser.Step21;

// Index MODEL [RUNS]: counts newlines over the mapped file, indexes the same file and copies it, in turn in one process, and prints the times and ratios of each run.
// The first run of each is not counted: the file is in memory then, and the code compiled.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var (model, runs) = (args[0], args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 7);
var copy = Path.Combine(Path.GetTempPath(), $"index-benchmark-{Environment.ProcessId}.ifc");
Console.WriteLine($"{new FileInfo(model).Length / 1e6:0.0} MB, {Environment.ProcessorCount} processors");
var ratios = new List<double>();
for (var run = 0; run <= runs; run++)
{
    var (lines, counting) = Timed(() => Newlines(model));
    var (instances, indexing) = Timed(() => Instances(model));
    var (_, copying) = Timed(() => Copied(model, copy));
    if (run > 0)
    {
        ratios.Add(indexing / counting);
        Console.WriteLine($"{lines} newlines {1000 * counting:0.0} ms; {instances} instances indexed {1000 * indexing:0.0} ms ({indexing / counting:0.00} times); copied {1000 * copying:0.0} ms ({indexing / copying:0.00} times)");
    }
}

ratios.Sort();
Console.WriteLine($"index to newline count: least {ratios[0]:0.00}, median {ratios[ratios.Count / 2]:0.00}, largest {ratios[^1]:0.00}");

static (long Count, double Seconds) Timed(Func<long> work)
{
    var watch = Stopwatch.StartNew();
    var count = work();
    return (count, watch.Elapsed.TotalSeconds);
}

static long Newlines(string path)
{
    using var file = MemoryMappedFile.CreateFromFile(path, FileMode.Open, null, 0, MemoryMappedFileAccess.Read);
    using var view = file.CreateViewStream(0, 0, MemoryMappedFileAccess.Read);
    var length = new FileInfo(path).Length;
    var count = 0L;
    const int Window = 1 << 30;
    for (var from = 0L; from < length; from += Window)
    {
        count += Span(view, from, (int)Math.Min(Window, length - from)).Count((byte)'\n');
    }

    return count;
}

static unsafe ReadOnlySpan<byte> Span(MemoryMappedViewStream view, long from, int length)
{
    byte* start = null;
    view.SafeMemoryMappedViewHandle.AcquirePointer(ref start);
    return new ReadOnlySpan<byte>(start + view.PointerOffset + from, length);
}

static long Instances(string path)
{
    var opened = StepFile.Open(path);
    using var file = opened.Value ?? throw new InvalidOperationException(opened.Fault!.ToString());
    return file.Count;
}

static long Copied(string path, string to)
{
    File.Copy(path, to, overwrite: true);
    File.Delete(to);
    return 1;
}
