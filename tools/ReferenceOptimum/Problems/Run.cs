namespace ReferenceOptimum.Problems;

/// <summary>A run to be filled with pieces and joints.</summary>
/// <param name="Start">What slopes at its start.</param>
/// <param name="End">What slopes at its end.</param>
internal readonly record struct Run(long From, long To, Rake Start, Rake End)
{
    /// <summary>Whether a piece of the run is cut: to length, or by a slope.</summary>
    public bool IsCut(Stretch piece, BondSizes sizes) =>
        !sizes.IsUncut(piece.Size) || piece.From < From + Start.Extent || piece.To > To - End.Extent;

    /// <summary>Whether a filling of the run has pieces too short under a slope.</summary>
    public bool IsShort(Stretch first, Stretch last) => first.Size < Start.Least || last.Size < End.Least;

    /// <summary>What of it concerns pieces, as text.</summary>
    public string Slopes() => FormattableString.Invariant($"{Start.Extent}/{Start.Least}/{End.Extent}/{End.Least}");
}
