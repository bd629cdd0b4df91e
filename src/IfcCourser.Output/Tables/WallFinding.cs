using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tables;

/// <summary>A finding as it is listed: with its wall.</summary>
/// <param name="Wall">Null for a finding of the model as a whole.</param>
public sealed record WallFinding(WallIdentity? Wall, Finding Finding)
{
    /// <summary>Those of the model, then those of its walls in the model's order; a wall that nobody asked for is no finding.</summary>
    public static IEnumerable<WallFinding> Of(Layout layout)
    {
        var coursed = layout.Walls.Select(wall => (wall.Identity, Findings: (IEnumerable<Finding>)wall.Findings));
        var skipped = layout.Skipped.Where(wall => wall.Reason.Code != FindingCodes.NotSelected)
            .Select(wall => (wall.Identity, Findings: (IEnumerable<Finding>)[wall.Reason]));
        return layout.Findings.Select(finding => new WallFinding(null, finding)).Concat(coursed.Concat(skipped)
            .OrderBy(wall => wall.Identity.StepId)
            .SelectMany(wall => wall.Findings.Select(finding => new WallFinding(wall.Identity, finding))));
    }
}
