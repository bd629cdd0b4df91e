using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>A range of block products, as bought: sizes are actual ones. All lengths along the wall unless named.</summary>
public sealed record Catalog
{
    /// <summary>Short name used on the command line, such as <c>aac-mm</c>.</summary>
    public required string Name { get; init; }

    /// <summary>One line saying what it is.</summary>
    public required string Title { get; init; }

    /// <summary>Where the values come from and how sure they are.</summary>
    public required string Source { get; init; }

    public required UnitSystem Units { get; init; }

    public required Length UnitLength { get; init; }

    public required Length UnitHeight { get; init; }

    /// <summary>Lengths of part units that can be bought uncut.</summary>
    public required ImmutableArray<Length> PartLengths { get; init; }

    /// <summary>Other unit heights that can be bought.</summary>
    public required ImmutableArray<Length> OtherHeights { get; init; }

    public required ImmutableArray<UnitWidth> Widths { get; init; }

    public required LengthRange HeadJoint { get; init; }

    public required LengthRange BedJoint { get; init; }

    public required LengthRange LevellingBed { get; init; }

    /// <summary>Cut lengths are whole multiples of this.</summary>
    public required Length CutGrid { get; init; }

    /// <summary>Width of the saw cut.</summary>
    public required Length Kerf { get; init; }

    /// <summary>Least length of a cut piece.</summary>
    public required Length MinPiece { get; init; }

    /// <summary>Pieces shorter than this are allowed but avoided.</summary>
    public required Length PreferredPiece { get; init; }

    /// <summary>Least height of a ripped course; null where units are never ripped.</summary>
    public required Length? LeastRip { get; init; }

    /// <summary>Least length of a pier between openings or to a wall's end.</summary>
    public required Length LeastPier { get; init; }

    /// <summary>Pitch of the module lines.</summary>
    public required Length Module { get; init; }

    /// <summary>Length of a lintel's bearing on each side.</summary>
    public required Length LintelBearing { get; init; }

    /// <summary>How long walls may be without a movement joint; null where only the rule set says so.</summary>
    public required PanelLimits? Panels { get; init; }

    public required ImmutableArray<LintelProduct> Lintels { get; init; }

    /// <summary>Units for bond beams; of those made for a wall's width the first is taken.</summary>
    public required ImmutableArray<TroughUnit> Troughs { get; init; }

    /// <summary>Core sizes, widest wall first.</summary>
    public required ImmutableArray<CoreOption> Cores { get; init; }

    /// <summary>What orders are reckoned with.</summary>
    public OrderingData Ordering { get; init; } = OrderingData.Unknown;

    /// <summary>
    /// Words that mark a layer, material, part or type name as this catalog's masonry: beginnings of words, or with a star
    /// before them any part of one, with a full stop behind them whole to their end; case does not count.
    /// </summary>
    public required ImmutableArray<string> MasonryWords { get; init; }

    /// <summary>Words that rule a name out although a masonry word matches ("gypsum block").</summary>
    public required ImmutableArray<string> OtherWords { get; init; }

    /// <summary>The pitch of full units: unit length and nominal head joint.</summary>
    public Length Pitch => UnitLength + HeadJoint.Nominal;

    /// <summary>The pitch of courses: unit height and nominal bed joint.</summary>
    public Length CoursePitch => UnitHeight + BedJoint.Nominal;

    /// <summary>The trough unit for a wall, null where none is made for its width.</summary>
    public TroughUnit? TroughFor(Length thickness) => Troughs.FirstOrDefault(trough => trough.Widths.IsEmpty || trough.Widths.Any(width => IsWidth(width, thickness)));

    /// <summary>How many of a product stand on a pallet, by its name, its height and the wall's thickness; null where it is not known.</summary>
    public int? PalletContent(string product, Length height, Length thickness)
    {
        var made = Ordering.Pallets.Where(pallet => pallet.Height.GetValueOrDefault(UnitHeight) == height && IsWidth(pallet.Width, thickness)).ToList();
        var own = made.Find(pallet => string.Equals(pallet.Product, product, StringComparison.Ordinal));
        return (own ?? (string.Equals(product, OrderingData.PartUnit, StringComparison.Ordinal) ? null : made.Find(pallet => pallet.Product is null)))?.Units;
    }

    /// <summary>Mass of a unit as delivered, kg, the hollow of a trough unit deducted; null where the density is not known.</summary>
    public double? Mass(string product, Length length, Length height, Length thickness)
    {
        var hollow = TroughFor(thickness) is { } trough && string.Equals(trough.Name, product, StringComparison.Ordinal) ? trough.HollowArea(thickness, height) : 0;
        var volume = ((thickness.Mm * height.Mm / 1e6) - hollow) * (length.Mm / 1000);
        return Ordering.Density * (100 + Ordering.MoisturePercent) / 100 * volume;
    }

    /// <summary>Whether a product made for a width, actual or nominal, fits a wall of a thickness, actual or nominal.</summary>
    public bool IsWidth(Length width, Length thickness) => width == thickness
        || Widths.Any(unit => (unit.Actual == width || unit.Nominal == width) && (unit.Actual == thickness || unit.Nominal == thickness));

    /// <summary>Whether a piece of this height can be bought or ripped.</summary>
    public bool CanBeLaid(Length height) =>
        height == UnitHeight || OtherHeights.Contains(height) || (height < UnitHeight && LeastRip is { } least && height >= least);
}
