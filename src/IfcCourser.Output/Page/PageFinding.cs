using IfcCourser.Findings;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Page;

/// <summary>A finding of the list.</summary>
/// <param name="Number">From 1 in the order of findings.csv.</param>
/// <param name="WallNumber">Null for a finding of the model as a whole.</param>
internal sealed record PageFinding(int Number, WallFinding Listed, int? WallNumber)
{
    public Finding Finding => Listed.Finding;
}
