using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>What can be done about a slab, the cheapest first.</summary>
/// <remarks>
/// Litres are weighed: off the underside of a block on the bench 1, filled 2, ground off a slab 6; exchanged for units of another height 0.5
/// (common practice, no source: how crews rank them; the figures are ours).
/// </remarks>
public static class SlabRemedies
{
    private const double OffBlocks = 1;
    private const double Filled = 2;
    private const double Ground = 6;
    private const double Exchanged = 0.5;
    private const double Litre = 1e6;

    /// <summary>mm: beds that pass a limit by less do not.</summary>
    private const double Dust = 1e-6;

    /// <summary>mm: how finely the cheapest level is sought.</summary>
    private const double Finest = 1e-9;

    public static ImmutableArray<SlabRemedy> Of(BedField field, Catalog catalog)
    {
        if (field.LowestClear <= field.HighestThin + Dust)
        {
            return [Level(field)];
        }

        SlabRemedy[] all =
        [
            Level(field),
            Remedy(field, RemedyKind.Trim, field.HighestThin, OffBlocks, catalog),
            Remedy(field, RemedyKind.Fill, field.LowestClear, OffBlocks, catalog),
            Remedy(field, RemedyKind.Grind, field.HighestThin, Ground, catalog),
            Remedy(field, RemedyKind.TrimAndFill, LeastEffort(field, OffBlocks, Filled), OffBlocks, catalog),
            Remedy(field, RemedyKind.GrindAndFill, LeastEffort(field, Ground, Filled), Ground, catalog),
            UnitHeights.Of(field, catalog) is { } other
                ? other with { Effort = other.Volume / Litre * Exchanged }
                : new SlabRemedy(RemedyKind.OtherUnits, 0, 0, 0, 0, 0, 0, IsPossible: false, 0),
        ];
        return [.. all.OrderBy(remedy => remedy.IsPossible ? 0 : 1).ThenBy(remedy => remedy.Effort).ThenBy(remedy => remedy.Kind)];
    }

    /// <summary>
    /// Where the course is raised to so that what is taken off highs and filled into lows costs least. The cost is convex in the height (its slope
    /// is the weighted area of lows less that of highs, which grows), so the least is where that changes its sign: halved to a thousandth of a nanometre.
    /// </summary>
    public static double LeastEffort(BedField field, double high, double low)
    {
        var (from, to) = (field.HighestThin, field.LowestClear);
        while (to - from > Finest)
        {
            var middle = (from + to) / 2;
            (from, to) = (low * field.Low(middle).Area) - (high * field.High(middle).Area) < 0 ? (middle, to) : (from, middle);
        }

        return to;
    }

    private static SlabRemedy Level(BedField field)
    {
        var low = field.Low(field.LowestClear);
        return new SlabRemedy(
            RemedyKind.RaiseDatum, field.LowestClear, 0, 0, 0, field.Room(field.LowestClear), 0, field.LowestClear <= field.HighestThin + Dust, low.Volume / Litre);
    }

    private static SlabRemedy Remedy(BedField field, RemedyKind kind, double raised, double highWeight, Catalog catalog)
    {
        var (high, low) = (field.High(raised), field.Low(raised));
        var isTrim = kind is RemedyKind.Trim or RemedyKind.TrimAndFill;
        var blocks = field.Blocks.Count(block => block.Facets.Any(facet => !facet.Below(field.Limits.Min.Mm - raised - Dust).IsEmpty));
        var mortar = field.Room(raised) + high.Volume - low.Volume;
        return new SlabRemedy(
            kind,
            raised,
            Math.Max(high.Depth, low.Depth),
            high.Area + low.Area,
            high.Volume + low.Volume,
            mortar,
            isTrim ? blocks : 0,
            !isTrim || CanTrim(catalog, high.Depth),
            ((high.Volume * highWeight) + (low.Volume * Filled)) / Litre);
    }

    private static bool CanTrim(Catalog catalog, double depth) => catalog.LeastRip is { } least && catalog.UnitHeight - Length.FromMm(depth) >= least;
}
