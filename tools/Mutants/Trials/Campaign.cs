using System.Diagnostics;
using System.Globalization;

namespace Mutants.Trials;

/// <summary>Has workers try all mutants; a worker that dies or hangs is a broken law of the mutant it was at, and the next one goes on behind it.</summary>
internal sealed class Campaign(Options options, IReadOnlyList<string> models)
{
    /// <summary>Of a worker's managed memory, bytes: small models need little of it.</summary>
    private const string MemoryLimit = "0x60000000";

    private readonly List<(int Number, string Law)> _broken = [];

    /// <summary>Prints broken laws as they are found, then the sum; false where there were any.</summary>
    public bool Holds()
    {
        var passed = Stopwatch.StartNew();
        var next = options.From;
        while (next < options.From + options.Count)
        {
            next = Work(next);
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{options.Count} mutants of {models.Count} models, seed {options.Seed}: {_broken.Count} break a law; {passed.Elapsed.TotalSeconds:0} s"));
        return _broken.Count == 0;
    }

    /// <summary>The number behind the last mutant that the worker tried.</summary>
    private int Work(int from)
    {
        var count = options.From + options.Count - from;
        string[] arguments = ["work", .. options.Folders, .. Pair("--seed", options.Seed), .. Pair("--from", from), .. Pair("--count", count), .. Pair("--largest", options.Largest)];
        var start = new ProcessStartInfo(Environment.ProcessPath!, [.. Host(), .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.Environment["DOTNET_GCHeapHardLimit"] = MemoryLimit;
        start.Environment["DOTNET_GCHeapHardLimitPercent"] = null;
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var (at, ended) = (from, from);
        while (process.StandardOutput.ReadLine() is { } line)
        {
            var words = line.Split(' ', 3);
            if (words[0] == "begin")
            {
                at = int.Parse(words[1], CultureInfo.InvariantCulture);
            }
            else if (words[0] == "end")
            {
                ended = at + 1;
                Note(at, words.Length > 2 ? words[2] : null);
            }
        }

        process.WaitForExit();
        if (ended <= at && process.ExitCode != 0)
        {
            Note(at, $"the process died with status {process.ExitCode}: {errors.GetAwaiter().GetResult().ReplaceLineEndings(" ")}");
            ended = at + 1;
        }

        return ended;
    }

    private void Note(int number, string? law)
    {
        const int Longest = 900;
        if (law is null)
        {
            return;
        }

        var mutant = Mutant.Make(models, options.Seed, number);
        _broken.Add((number, law));
        Console.WriteLine($"{number} {mutant.Description}\n    {law[..Math.Min(law.Length, Longest)]}");
        if (options.Keep is not null)
        {
            Directory.CreateDirectory(options.Keep);
            File.WriteAllBytes(Path.Combine(options.Keep, string.Create(CultureInfo.InvariantCulture, $"{options.Seed}-{number}.ifc")), mutant.Bytes);
        }
    }

    private static string[] Pair(string name, int value) => [name, value.ToString(CultureInfo.InvariantCulture)];

    /// <summary>What stands before the arguments where the process is the shared host.</summary>
    private static string[] Host() =>
        Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet" ? [typeof(Campaign).Assembly.Location] : [];
}
