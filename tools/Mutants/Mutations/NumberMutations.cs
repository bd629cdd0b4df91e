using System.Globalization;
using Mutants.Step;

namespace Mutants.Mutations;

/// <summary>Changes to numbers.</summary>
internal static class NumberMutations
{
    private static readonly string[] _odd =
    [
        "NaN", "nan", "-NAN", "INF", "1.#IND", "1.#QNAN", "1e400", "-1E400", "1e308", "-1e308", "1e-400", "1E300", "0", "0.", "-0.", "-1", "1", "1e9", "1E12", "1e15",
        "1E18", "1e19", "123456789.", "9223372036854775807", "-9223372036854775808", "9223372036854775808", "99999999999999999999999999", "2147483648", "1e-9", "1E-6",
        "0.5", "1.5E", "1,5", "--1", "+1", ".5", "1e+", "0x10", "1 000.", "1e99999999999",
    ];

    public static bool Odd(Draft draft, Random random) => Change(draft, random, _ => random.Of(_odd));

    public static bool Scale(Draft draft, Random random)
    {
        double[] factors = [1e-9, 1e-6, 1e-3, 0.01, 0.1, 0.3048, 0.5, 0.99, 1.01, 2, 3, 10, 25.4, 100, 1000, 1e4, 1e6];
        return Change(draft, random, text => Written(ValueOf(text) * random.Of(factors)));
    }

    public static bool Nudge(Draft draft, Random random)
    {
        double[] steps = [1e-12, 1e-9, 1e-6, 1e-4, 1e-3, 0.01, 0.1, 0.5, 1];
        return Change(draft, random, text => Written(ValueOf(text) + (random.Of(steps) * (random.Next(2) == 0 ? 1 : -1))));
    }

    public static bool Negate(Draft draft, Random random) => Change(draft, random, text => text.StartsWith('-') ? text[1..] : "-" + text);

    /// <summary>The value of another number of the file.</summary>
    public static bool Borrow(Draft draft, Random random) =>
        Change(draft, random, text => random.Place(draft, TokenKind.Number) is { } other ? draft.Tokens[other].Text : text);

    private static bool Change(Draft draft, Random random, Func<string, string> change)
    {
        if (random.Place(draft, TokenKind.Number) is not { } place)
        {
            return false;
        }

        draft.Tokens[place] = draft.Tokens[place].With(change(draft.Tokens[place].Text));
        return true;
    }

    private static double ValueOf(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : 0;

    private static string Written(double value)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        return text.Contains('.', StringComparison.Ordinal) || !double.IsFinite(value) ? text
            : text.Contains('E', StringComparison.Ordinal) ? text.Replace("E", ".E", StringComparison.Ordinal)
            : text + ".";
    }
}
