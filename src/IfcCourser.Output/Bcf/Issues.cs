using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Coordination;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Bcf;

/// <summary>The findings that are worth a designer's answer: what the model would have to change, not what the mason or the engineer settles.</summary>
internal static class Issues
{
    private static readonly ImmutableHashSet<FindingCode> _codes =
    [
        FindingCodes.OpeningMoved, FindingCodes.OpeningOffModule, FindingCodes.HeadOffCourse, FindingCodes.HeadRaised, FindingCodes.SillOffCourse,
        FindingCodes.PierShort, FindingCodes.PierNotBondable, FindingCodes.LintelMissing, FindingCodes.BearingShort, FindingCodes.WallLengthOffModule,
        FindingCodes.SlabStep, FindingCodes.TeeInOpening, FindingCodes.NearMiss, FindingCodes.WallsOverlap, FindingCodes.CoincidentWall, FindingCodes.DoorWithoutOpening,
        FindingCodes.OpeningNotRead, FindingCodes.OpeningTakesWall, FindingCodes.WidthNotInCatalog, FindingCodes.WidthNearest, FindingCodes.LayerNotLocated,
        FindingCodes.LowerThanOneCourse, FindingCodes.ShorterThanLeastPiece, FindingCodes.BodyNotRead, FindingCodes.NoBody, FindingCodes.BarInDoorway,
        FindingCodes.MovementJointMissing, FindingCodes.DuplicateGlobalId, FindingCodes.OpeningsOverlap, FindingCodes.OpeningAtCorner, FindingCodes.OpeningAtTee,
        FindingCodes.LintelAtJoint,
    ];

    /// <summary>In the order of the findings.</summary>
    public static IEnumerable<Issue> Of(Layout layout)
    {
        var laid = layout.Walls.ToDictionary(wall => wall.Identity.GlobalId, StringComparer.Ordinal);
        var skipped = layout.Skipped.ToLookup(wall => wall.Identity.GlobalId, StringComparer.Ordinal);
        return WallFinding.Of(layout).Where(listed => _codes.Contains(listed.Finding.Code))
            .GroupBy(listed => FindingKey.Of(layout.Model, listed))
            .Select(same => (same.Key, Findings: same.Select(listed => listed.Finding).OrderByDescending(finding => finding.Severity).ToImmutableArray(), same.First().Wall))
            .Select(same =>
            {
                var id = same.Wall?.GlobalId ?? same.Findings[0].At?.Walls.FirstOrDefault(laid.ContainsKey);
                var wall = id is null ? null : laid.GetValueOrDefault(id);
                return new Issue(
                    IssueGuid.Of(same.Key.Project, same.Key.Opening.Length > 0 ? same.Key.Opening : same.Key.Wall, same.Key.Code),
                    same.Findings[0].Code,
                    same.Findings,
                    same.Wall ?? wall?.Identity,
                    wall,
                    wall?.Openings.FirstOrDefault(opening => string.Equals(opening.Opening.GlobalId, same.Key.Opening, StringComparison.Ordinal)),
                    id is null ? null : skipped[id].FirstOrDefault()?.Body);
            });
    }
}
