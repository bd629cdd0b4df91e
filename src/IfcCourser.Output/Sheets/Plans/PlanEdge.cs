namespace IfcCourser.Output.Sheets.Plans;

/// <summary>A match line of a plan.</summary>
/// <param name="IsUpright">Whether it runs along y.</param>
/// <param name="At">Across the line, axes of the plan, real millimetres.</param>
/// <param name="Beyond">Index of the part on its other side.</param>
internal sealed record PlanEdge(bool IsUpright, double At, int Beyond);
