namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A place that a tier of running dimensions measures.</summary>
/// <param name="At">Along the axis, real millimetres.</param>
/// <param name="Prefix">Printed before the measurement.</param>
internal readonly record struct Station(double At, string Prefix = "");
