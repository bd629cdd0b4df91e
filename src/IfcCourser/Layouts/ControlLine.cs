namespace IfcCourser.Layouts;

/// <summary>A line that is set out first.</summary>
/// <param name="Tag">Of a grid line; empty for others.</param>
public sealed record ControlLine(ControlLineKind Kind, string Tag);
