using System.Collections.Immutable;
using IfcCourser.Findings;

namespace IfcCourser.Walls;

/// <summary>
/// Models give the same GlobalId to several walls (copies made by text or by faulty exports); everything behind this
/// point names walls by it. Later ones get their instance number appended, and a finding.
/// </summary>
public static class UniqueIds
{
    public static WallModel Of(WallModel model)
    {
        var walls = model.Walls.Select(wall => wall.Identity).Concat(model.Skipped.Select(wall => wall.Identity));
        var renamed = walls.GroupBy(identity => identity.GlobalId, StringComparer.Ordinal)
            .SelectMany(same => same.OrderBy(identity => identity.StepId).Skip(1))
            .Select(identity => identity.StepId)
            .ToImmutableHashSet();
        return renamed.IsEmpty ? model : model with
        {
            Walls = [.. model.Walls.Select(wall => renamed.Contains(wall.Identity.StepId) ? Renamed(wall) : wall)],
            Skipped = [.. model.Skipped.Select(wall => renamed.Contains(wall.Identity.StepId) ? wall with { Identity = Renamed(wall.Identity) } : wall)],
            Findings = [.. model.Findings, .. renamed.Order().Select(Found)],
        };

        Finding Found(long stepId) => new(
            FindingCodes.DuplicateGlobalId,
            FormattableString.Invariant($"The GlobalId of wall #{stepId} is also that of a wall before it; here it is called {Renamed(walls.First(wall => wall.StepId == stepId)).GlobalId}."));
    }

    private static Wall Renamed(Wall wall) => wall with { Identity = Renamed(wall.Identity) };

    private static WallIdentity Renamed(WallIdentity identity) =>
        identity with { GlobalId = FormattableString.Invariant($"{identity.GlobalId}#{identity.StepId}") };
}
