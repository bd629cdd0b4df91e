using IfcCourser.Layouts;

namespace IfcCourser.Output.Batches;

/// <summary>How often a lot's layout found something.</summary>
/// <param name="Code">Id of the finding's code.</param>
public sealed record FindingCount(string Code, Findings.Severity Severity, int Count)
{
    /// <summary>The findings of a layout, the gravest first, then by code.</summary>
    public static ImmutableArray<FindingCount> Of(Layout layout) =>
    [
        .. LayoutTotals.AllFindings(layout).CountBy(finding => (finding.Code.Id, finding.Severity))
            .Select(found => new FindingCount(found.Key.Id, found.Key.Severity, found.Value))
            .OrderByDescending(found => found.Severity).ThenBy(found => found.Code, StringComparer.Ordinal),
    ];
}
