using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Pdf;

/// <summary>A sheet and where its bookmark stands: under the section's name, such as a storey, or on its own.</summary>
public sealed record PdfPage(Sheet Sheet, string? Section);
