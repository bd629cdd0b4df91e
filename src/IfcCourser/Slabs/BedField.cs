using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>The levelling beds under a storey's first course, for any height that the course is raised to.</summary>
/// <param name="Blocks">At least one.</param>
/// <param name="Limits">Of the bed.</param>
public sealed record BedField(ImmutableArray<BlockFacets> Blocks, LengthRange Limits)
{
    private IEnumerable<Facet> Facets => Blocks.SelectMany(block => block.Facets);

    /// <summary>The least bed where the course stands as designed, mm; negative where the slab is higher.</summary>
    public double Least => Facets.SelectMany(facet => facet.Corners).Min(corner => corner.Value);

    /// <summary>The thickest bed where the course stands as designed, mm.</summary>
    public double Most => Facets.SelectMany(facet => facet.Corners).Max(corner => corner.Value);

    /// <summary>What the lowest course that has the least bed everywhere is raised by, mm.</summary>
    public double LowestClear => Limits.Min.Mm - Least;

    /// <summary>What the highest course whose bed is nowhere over the limit is raised by, mm.</summary>
    public double HighestThin => Limits.Max.Mm - Most;

    /// <summary>Where the slab is too high for the least bed: area (mm2), volume (mm3) and depth (mm) that must go.</summary>
    public BedShortfall High(double raised) => Sum(Facets.Select(facet => facet.Below(Limits.Min.Mm - raised)), value => Limits.Min.Mm - raised - value);

    /// <summary>Where the bed is thicker than its limit: what must be filled before.</summary>
    public BedShortfall Low(double raised) => Sum(Facets.Select(facet => facet.Above(Limits.Max.Mm - raised)), value => raised + value - Limits.Max.Mm);

    /// <summary>Room between slab and undersides, mm3; negative where the slab is higher.</summary>
    public double Room(double raised) => Facets.Sum(facet => facet.Volume) + (raised * Area);

    /// <summary>Mortar of the bed, its limits apart, mm3.</summary>
    public double Mortar(double raised) => Facets.Select(facet => facet.Above(-raised)).Where(facet => !facet.IsEmpty).Sum(facet => facet.Volume + (raised * facet.Area));

    /// <summary>Of all undersides, mm2.</summary>
    public double Area => Facets.Sum(facet => facet.Area);

    private static BedShortfall Sum(IEnumerable<Facet> parts, Func<double, double> depth)
    {
        var (area, volume, most) = (0.0, 0.0, 0.0);
        foreach (var part in parts.Where(part => !part.IsEmpty))
        {
            var deep = part.With(corner => depth(corner.Value));
            (area, volume, most) = (area + deep.Area, volume + deep.Volume, Math.Max(most, deep.Corners.Max(corner => corner.Value)));
        }

        return new BedShortfall(area, volume, most);
    }
}
