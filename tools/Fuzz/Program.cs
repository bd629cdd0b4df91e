using System.Diagnostics;
using System.Globalization;
using Fuzz.Targets;
using SharpFuzz;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (args is [var fuzzed] && Find(fuzzed) is { } under)
{
    // Out of process: what takes the process down, as a stack that runs over, is seen too.
    Fuzzer.OutOfProcess.Run(stream =>
    {
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        under.Read(bytes.ToArray());
    });
    return 0;
}

if (args is ["read", var name, .. var folders] && Find(name) is { } target && folders.Length > 0)
{
    var passed = Stopwatch.StartNew();
    var files = folders.Where(Directory.Exists).SelectMany(folder => Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal)).ToList();
    foreach (var file in files)
    {
        Console.Error.WriteLine(file);
        target.Read(File.ReadAllBytes(file));
    }

    Console.WriteLine($"{name}: {files.Count} inputs read in {passed.Elapsed.TotalSeconds:0.0} s");
    return files.Count > 0 ? 0 : 1;
}

Console.Error.WriteLine($"usage: Fuzz TARGET (under afl-fuzz), or Fuzz read TARGET FOLDER...; targets: {string.Join(", ", Target.All.Select(known => known.Name))}");
return 2;

static Target? Find(string name) => Target.All.FirstOrDefault(known => known.Name == name);
