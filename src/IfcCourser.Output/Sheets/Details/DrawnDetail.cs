using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>A detail at a scale.</summary>
internal sealed record DrawnDetail(Detail Detail, Canvas Canvas);
