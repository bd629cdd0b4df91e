using System.Globalization;

namespace Mutants;

/// <summary>What the command line asks for.</summary>
/// <param name="Folders">Where models lie, each with its subfolders.</param>
/// <param name="Largest">Models larger than so many KB are left out: whole houses take near the ten seconds as they are.</param>
/// <param name="Keep">Where mutants that break a law are kept; null to keep none.</param>
internal sealed record Options(IReadOnlyList<string> Folders, int Seed, int From, int Count, int Largest, string? Keep)
{
    public const string Usage = "usage: Mutants FOLDER... [--seed N] [--from N] [--count N] [--largest KB] [--keep FOLDER]";

    public static Options? Read(IReadOnlyList<string> arguments)
    {
        var options = new Options([], 1, 0, 1000, 20, null);
        for (var i = 0; i < arguments.Count; i++)
        {
            if (!arguments[i].StartsWith("--", StringComparison.Ordinal))
            {
                options = options with { Folders = [.. options.Folders, arguments[i]] };
            }
            else if (++i == arguments.Count || With(options, arguments[i - 1], arguments[i]) is not { } more)
            {
                return null;
            }
            else
            {
                options = more;
            }
        }

        return options.Folders.Count > 0 && options.Folders.All(Directory.Exists) ? options : null;
    }

    private static Options? With(Options options, string name, string value) => (name, int.TryParse(value, CultureInfo.InvariantCulture, out var number)) switch
    {
        ("--seed", true) => options with { Seed = number },
        ("--from", true) => options with { From = number },
        ("--count", true) => options with { Count = number },
        ("--largest", true) => options with { Largest = number },
        ("--keep", _) => options with { Keep = value },
        _ => null,
    };
}
