using System.Globalization;

namespace ReferenceOptimum;

/// <summary>What the command line asks for.</summary>
/// <param name="Effort">Deterministic time for one solution of the constraint program; a unit is a second or a little less.</param>
/// <param name="Each">Walls of each model at most.</param>
/// <param name="Set">Only walls with this catalog and rule set, as aac-in/us; empty: all.</param>
/// <param name="AreGables">Whether generated walls have sloped tops.</param>
/// <param name="IsLong">Whether differing bonds are printed course by course.</param>
internal sealed record Options(Verb Verb, string Folder, int Seed, int From, int Count, int Each, double Effort, string Set, bool IsLong, bool AreGables = false)
{
    public const string Usage = """
        usage: ReferenceOptimum generated [--gables] [--seed N] [--from N] [--count N] [--set CATALOG/RULES] [--effort E] [--long]
               ReferenceOptimum models FOLDER [--count N] [--each N] [--set CATALOG/RULES] [--effort E] [--long]
               ReferenceOptimum bars [MODEL.ifc|FOLDER] [--seed N] [--from N] [--count N] [--effort E] [--long]
               ReferenceOptimum self-check [--seed N] [--count N]
               ReferenceOptimum saw [--seed N] [--from N] [--count N] [--effort E]
        """;

    public static Options? Read(string[] args)
    {
        var options = args switch
        {
            ["generated", ..] => new Options(Verb.Generated, "", 1, 0, 100, int.MaxValue, 1.5, "", false),
            ["models", var folder, ..] => new Options(Verb.Models, folder, 1, 0, 20, int.MaxValue, 1.5, "", false),
            ["bars", var folder, ..] when !folder.StartsWith("--", StringComparison.Ordinal) => new Options(Verb.Bars, folder, 1, 0, int.MaxValue, int.MaxValue, 4, "", false),
            ["bars", ..] => new Options(Verb.Bars, "", 1, 0, 100, int.MaxValue, 4, "", false),
            ["self-check", ..] => new Options(Verb.SelfCheck, "", 1, 0, 200, int.MaxValue, 1.5, "", false),
            ["saw", ..] => new Options(Verb.Saw, "", 1, 0, 100, int.MaxValue, 5, "", false),
            _ => null,
        };
        var rest = args.Skip(options is { Folder.Length: > 0 } ? 2 : 1).ToList();
        for (var i = 0; i < rest.Count && options is not null; i++)
        {
            options = With(options, rest[i], i + 1 < rest.Count ? rest[i + 1] : "");
            i += rest[i] is "--long" or "--gables" ? 0 : 1;
        }

        return options;
    }

    private static Options? With(Options options, string name, string value) => (name, int.TryParse(value, CultureInfo.InvariantCulture, out var number)) switch
    {
        ("--seed", true) => options with { Seed = number },
        ("--from", true) => options with { From = number },
        ("--count", true) => options with { Count = number },
        ("--each", true) => options with { Each = number },
        ("--set", _) => options with { Set = value },
        ("--effort", _) when double.TryParse(value, CultureInfo.InvariantCulture, out var effort) => options with { Effort = effort },
        ("--gables", _) => options with { AreGables = true },
        ("--long", _) => options with { IsLong = true },
        _ => null,
    };
}
