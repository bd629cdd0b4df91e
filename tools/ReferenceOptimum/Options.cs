using System.Globalization;

namespace ReferenceOptimum;

/// <summary>What the command line asks for.</summary>
/// <param name="Verb">What to compare.</param>
/// <param name="Folder">Of models; empty: generated walls.</param>
/// <param name="Count">Walls, layouts or lists at most.</param>
/// <param name="Effort">Deterministic time for one solution of the constraint program; a unit is a second or a little less.</param>
internal sealed record Options(Verb Verb, string Folder, int Count, double Effort)
{
    public const string Usage = """
        usage: ReferenceOptimum generated [--gables] [--seed N] [--from N] [--count N] [--set CATALOG/RULES] [--effort E] [--long]
               ReferenceOptimum models FOLDER [--count N] [--each N] [--set CATALOG/RULES] [--effort E] [--long]
               ReferenceOptimum bars [MODEL.ifc|FOLDER] [--seed N] [--from N] [--count N] [--effort E] [--long]
               ReferenceOptimum self-check [--seed N] [--count N]
               ReferenceOptimum saw [--seed N] [--from N] [--count N] [--effort E]
        """;

    public int Seed { get; private init; } = 1;

    /// <summary>The first number of the series.</summary>
    public int From { get; private init; }

    /// <summary>Walls of each model at most.</summary>
    public int Each { get; private init; } = int.MaxValue;

    /// <summary>Only walls with this catalog and rule set, as aac-in/us; empty: all.</summary>
    public string Set { get; private init; } = "";

    /// <summary>Whether generated walls have sloped tops.</summary>
    public bool AreGables { get; private init; }

    /// <summary>Whether differing bonds are printed course by course.</summary>
    public bool IsLong { get; private init; }

    public static Options? Read(string[] args)
    {
        var options = args switch
        {
            ["generated", ..] => new Options(Verb.Generated, "", 100, 1.5),
            ["models", var folder, ..] => new Options(Verb.Models, folder, 20, 1.5),
            ["bars", var folder, ..] when !folder.StartsWith("--", StringComparison.Ordinal) => new Options(Verb.Bars, folder, int.MaxValue, 4),
            ["bars", ..] => new Options(Verb.Bars, "", 100, 4),
            ["self-check", ..] => new Options(Verb.SelfCheck, "", 200, 1.5),
            ["saw", ..] => new Options(Verb.Saw, "", 100, 5),
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
