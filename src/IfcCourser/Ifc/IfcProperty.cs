using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>A property or quantity.</summary>
/// <param name="Value">As written; a list for enumerated values.</param>
/// <param name="Si">Lengths in m, areas in m2, volumes in m3, angles in rad, other numbers as written; null for what is no number.</param>
public sealed record IfcProperty(string Name, StepValue Value, double? Si);
