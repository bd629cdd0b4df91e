using System.Diagnostics;
using System.Globalization;
using static System.FormattableString;

namespace Mutants.Trials;

/// <summary>Tries mutants one after the other in this process and tells of each on standard output; a mutant may take the process down.</summary>
internal static class Worker
{
    public const int HungStatus = 3;

    /// <summary>Of processor time: a busy machine makes no hang. A wall scaled to thousands of blocks takes some 14 s with all files.</summary>
    private static readonly TimeSpan _most = TimeSpan.FromSeconds(30);

    /// <summary>Passed: of what waits without computing.</summary>
    private static readonly TimeSpan _mostPassed = TimeSpan.FromSeconds(120);

    /// <summary>As the main thread of a process has it.</summary>
    private const int Stack = 8 * 1024 * 1024;

    public static int Run(Options options, IReadOnlyList<string> models)
    {
        var folder = Path.Combine(Path.GetTempPath(), string.Create(CultureInfo.InvariantCulture, $"ifccourser-mutants-{Environment.ProcessId}"));
        for (var number = options.From; number < options.From + options.Count; number++)
        {
            Tell(Invariant($"begin {number}"));
            var mutant = Mutant.Make(models, options.Seed, number);
            string? broken = null;
            var (began, passed) = (Environment.CpuUsage.TotalTime, Stopwatch.StartNew());
            var thread = new Thread(() => broken = Broken(mutant, folder), Stack) { IsBackground = true };
            thread.Start();
            while (!thread.Join(TimeSpan.FromMilliseconds(100)))
            {
                var spent = Environment.CpuUsage.TotalTime - began;
                if (spent > _most || passed.Elapsed > _mostPassed)
                {
                    Tell(Invariant($"end {number} no end after {spent.TotalSeconds:0} s of processor time"));
                    Directory.Delete(folder, recursive: true);
                    return HungStatus;
                }
            }

            Tell(Invariant($"end {number} {broken?.ReplaceLineEndings(" ")}").TrimEnd());
        }

        Directory.Delete(folder, recursive: true);
        return 0;
    }

    private static string? Broken(Mutant mutant, string folder)
    {
        try
        {
            return new Trial(mutant, folder).Broken();
        }
#pragma warning disable CA1031 // Do not catch general exception types: whatever is thrown is what is looked for
        catch (Exception e)
#pragma warning restore CA1031
        {
            return $"exception outside the command: {e.GetType().Name}: {e.Message} {e.StackTrace}";
        }
    }

    private static void Tell(string line)
    {
        Console.Out.WriteLine(line);
        Console.Out.Flush();
    }
}
