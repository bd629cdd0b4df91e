using System.Globalization;

namespace IfcCourser.Output.Tables;

/// <summary>A cell of a CSV file (RFC 4180).</summary>
public static class CsvCell
{
    /// <summary>
    /// The text, in quotes where it needs them. What a spreadsheet would take for a formula, and is no number, gets an apostrophe before it: names come out of
    /// models that strangers made. The full-width signs of some keyboards count as well.
    /// </summary>
    public static string Of(string? text)
    {
        if (text is null)
        {
            return string.Empty;
        }

        var safe = IsFormula(text) ? "'" + text : text;
        return safe.AsSpan().ContainsAny(",\"\r\n") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }

    private static bool IsFormula(string text) => text.Length > 0 && (text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20')
        && !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
