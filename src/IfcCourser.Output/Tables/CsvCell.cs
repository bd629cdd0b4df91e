namespace IfcCourser.Output.Tables;

/// <summary>A cell of a table as RFC 4180 writes it.</summary>
internal static class CsvCell
{
    public static string Of(string? text) =>
        text is null ? string.Empty
        : text.AsSpan().ContainsAny(",\"\r\n") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
        : text;
}
