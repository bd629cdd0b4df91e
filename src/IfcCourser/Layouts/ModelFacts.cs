namespace IfcCourser.Layouts;

/// <summary>Which model was laid out.</summary>
/// <param name="File">File name without folders.</param>
/// <param name="Sha256">Of the file's bytes, lower-case hex.</param>
/// <param name="Schema">IFC2X3, IFC4 or IFC4X3.</param>
/// <param name="LengthUnitMm">Millimetres in the model's length unit.</param>
/// <param name="ProjectId">GlobalId of the IfcProject.</param>
/// <param name="ProjectName">Name of the IfcProject.</param>
/// <param name="Date">ISO 8601 date stamped on outputs: passed in, or the model's own time stamp.</param>
public sealed record ModelFacts(
    string File, string Sha256, string Schema, double LengthUnitMm, string? ProjectId, string? ProjectName, string Date)
{
    /// <summary>How the plan stands on its lot.</summary>
    public LotSiting Siting { get; init; } = LotSiting.AsDrawn;
}
