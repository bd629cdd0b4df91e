using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Reports;

/// <summary>A wall's bond beside the reference's. What stands whatever is laid is counted in none of the three.</summary>
/// <param name="Name">Which wall, with catalog and rules.</param>
/// <param name="Size">What it looks like.</param>
/// <param name="Pieces">How many pieces our bond has.</param>
/// <param name="Ours">Our bond.</param>
/// <param name="Found">The reference's.</param>
/// <param name="Least">No bond is better than this.</param>
/// <param name="Details">Where they differ.</param>
internal sealed record WallResult(string Name, string Size, int Pieces, BondCount Ours, BondCount Found, BondCount Least, IReadOnlyList<string> Details)
{
    /// <summary>Walls of at most so many pieces are small.</summary>
    public const int MostPiecesOfSmall = 40;

    public bool IsSmall => Pieces <= MostPiecesOfSmall;

    public bool IsOptimal => Ours == Least;

    public bool IsProven => Found == Least;

    /// <summary>The reference has a bond that breaks fewer rules.</summary>
    public bool BreaksAvoidably => (Found.Breaches, Found.Bearings).CompareTo((Ours.Breaches, Ours.Bearings)) < 0;

    /// <summary>Whether it is known that no bond breaks fewer rules than ours.</summary>
    public bool BreaksLeast => (Ours.Breaches, Ours.Bearings) == (Least.Breaches, Least.Bearings);

    /// <summary>Cuts over the bound, in percent of it; only where the rules broken are the fewest.</summary>
    public double GapPercent => Least.Cuts == 0 ? (Ours.Cuts == 0 ? 0 : 100) : 100.0 * (Ours.Cuts - Least.Cuts) / Least.Cuts;

    private string Mark => IsOptimal ? "=" : BreaksAvoidably ? "!" : Found.Cuts < Ours.Cuts && BreaksLeast ? "<" : "?";

    public override string ToString() => $"{Mark} {Name} {Size}, {Pieces} pieces: ours {Ours}, found {Found}, least {Least}";
}
