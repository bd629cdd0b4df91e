using IfcCourser.Findings;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Batches;

/// <summary>What a lot, or several together, come to.</summary>
/// <param name="Coursed">Walls laid out.</param>
/// <param name="FullUnits">Pieces laid uncut, bought part lengths included.</param>
/// <param name="PartUnits">Pieces that are cut.</param>
/// <param name="Cuts">Saw cuts.</param>
public sealed record LotCounts(
    int Walls, int Coursed, int Pieces, int FullUnits, int PartUnits, int Cuts, int Cores, int Lintels, int Errors, int Warnings, int Notes)
{
    public static readonly LotCounts None = new(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    public int Findings => Errors + Warnings + Notes;

    public static LotCounts operator +(LotCounts a, LotCounts b) => new(
        a.Walls + b.Walls, a.Coursed + b.Coursed, a.Pieces + b.Pieces, a.FullUnits + b.FullUnits, a.PartUnits + b.PartUnits, a.Cuts + b.Cuts,
        a.Cores + b.Cores, a.Lintels + b.Lintels, a.Errors + b.Errors, a.Warnings + b.Warnings, a.Notes + b.Notes);

    public static LotCounts Of(Layout layout)
    {
        var totals = LayoutTotals.Of(layout);
        var severities = LayoutTotals.AllFindings(layout).CountBy(finding => finding.Severity).ToDictionary();
        return new LotCounts(
            totals.Walls, totals.Coursed, totals.Pieces, totals.FullUnits, totals.PartUnits, totals.Cuts, totals.Cores, totals.Lintels,
            severities.GetValueOrDefault(Severity.Error), severities.GetValueOrDefault(Severity.Warning), severities.GetValueOrDefault(Severity.Note));
    }

    public int AtLeast(Severity least) => least switch
    {
        Severity.Error => Errors,
        Severity.Warning => Errors + Warnings,
        _ => Findings,
    };
}
