namespace IfcCourser.Output.Pdf;

/// <summary>What a file of sheets says of itself.</summary>
/// <param name="Date">ISO 8601 date, with or without time; what is none is left out.</param>
public sealed record PdfSet(string Title, string? Author, string Date);
