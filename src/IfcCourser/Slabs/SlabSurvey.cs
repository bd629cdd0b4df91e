using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;

namespace IfcCourser.Slabs;

/// <summary>Readings of a slab turned into a level for the first course.</summary>
public sealed record SlabSurvey
{
    public required Layout Layout { get; init; }

    /// <summary>Name of the storey; null for walls that no storey holds.</summary>
    public required string? Storey { get; init; }

    public required PlacedReadings Readings { get; init; }

    public required SlabSurface Surface { get; init; }

    public required BedField Field { get; init; }

    /// <summary>The first is taken.</summary>
    public required ImmutableArray<SlabRemedy> Remedies { get; init; }

    /// <summary>In the order of the walls, from left to right.</summary>
    public required ImmutableArray<BlockBed> Beds { get; init; }

    public required ImmutableArray<BarAsBuilt> Bars { get; init; }

    /// <summary>Walls whose blocks are laid otherwise around bars as built, in the order of the layout.</summary>
    public ImmutableArray<BondChange> BondChanges { get; init; } = [];

    /// <summary>Figures beside standards' tolerances.</summary>
    public required ImmutableArray<ToleranceCheck> Tolerances { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    public SlabRemedy Chosen => Remedies[0];

    /// <summary>Underside of the lowest first course, in the heights of the readings, mm.</summary>
    public double Datum => Beds.Min(bed => bed.Block.Underside) + Chosen.Raised + Readings.Zero;

    /// <summary>The most that the slab under the blocks differs from a level plane, or from its designed steps, mm.</summary>
    public double Spread => Field.Most - Field.Least;
}
