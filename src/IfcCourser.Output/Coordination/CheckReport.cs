using IfcCourser.Layouts;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Coordination;

/// <summary>What check found, and which of it was accepted before.</summary>
/// <param name="Findings">Those of the model, then those of its walls in the model's order.</param>
public sealed record CheckReport(Layout Layout, ImmutableArray<CheckedFinding> Findings)
{
    /// <summary>Of several findings with one key as many are accepted as the baseline counts, the first ones.</summary>
    public static CheckReport Of(Layout layout, Baseline? accepted)
    {
        var left = accepted?.Accepted.ToDictionary() ?? [];
        return new CheckReport(layout, [.. WallFinding.Of(layout).Select(listed =>
        {
            var key = FindingKey.Of(layout.Model, listed);
            var isAccepted = left.TryGetValue(key, out var count) && count > 0;
            left[key] = isAccepted ? count - 1 : 0;
            return new CheckedFinding(listed, isAccepted);
        })]);
    }
}
