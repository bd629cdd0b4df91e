using IfcCourser.Catalogs;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>
/// Least overlap of head joints in neighbouring courses: the largest of a share of the pitch, a share of the unit
/// height and a fixed length; other shares and floors hold for units above a height.
/// </summary>
/// <remarks>
/// EN 1996-1-1:2005 8.1.4.1: hu &lt;= 250 mm: max(0.4 hu, 40 mm), above: max(0.2 hu, 100 mm) (from memory).
/// Running bond: a quarter of the unit (MSJC, read in a handbook).
/// </remarks>
public sealed record OverlapRule
{
    /// <summary>Share of the unit pitch in thousandths.</summary>
    public required int OfPitchPerMille { get; init; }

    /// <summary>Share of the unit height in thousandths.</summary>
    public required int OfHeightPerMille { get; init; }

    public required Length Least { get; init; }

    /// <summary>Units higher than this take the second pair; null where there is none.</summary>
    public required Length? TallAbove { get; init; }

    public required int TallOfHeightPerMille { get; init; }

    public required Length TallLeast { get; init; }

    public Length For(Catalog catalog)
    {
        var tall = TallAbove is { } limit && catalog.UnitHeight > limit;
        var ofHeight = catalog.UnitHeight * (tall ? TallOfHeightPerMille : OfHeightPerMille) / 1000;
        var ofPitch = catalog.Pitch * OfPitchPerMille / 1000;
        return Length.Max(Length.Max(ofHeight, ofPitch), tall ? TallLeast : Least);
    }
}
