namespace IfcCourser.Output.Tables;

/// <summary>A cell of a CSV file (RFC 4180).</summary>
public static class CsvCell
{
    /// <summary>The text, in quotes where it needs them.</summary>
    public static string Of(string? text) =>
        text is null ? string.Empty
        : text.AsSpan().ContainsAny(",\"\r\n") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
        : text;
}
