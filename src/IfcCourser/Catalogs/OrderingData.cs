using System.Collections.Immutable;

namespace IfcCourser.Catalogs;

/// <summary>What orders are reckoned with: the supplier's values, of which any may be unknown.</summary>
public sealed record OrderingData
{
    /// <summary>Product of plain units, as pieces name it.</summary>
    public const string Unit = "unit";

    /// <summary>Product of bought part lengths, as pieces name it.</summary>
    public const string PartUnit = "part unit";

    /// <summary>Product of units with a core made in the works.</summary>
    public const string CoredUnit = "cored unit";

    /// <summary>A catalog that says nothing.</summary>
    public static readonly OrderingData Unknown = new();

    /// <summary>Dry mass of a unit over the volume of its outside, kg/m3; null where it is not known.</summary>
    public double? Density { get; init; }

    /// <summary>Water in units as delivered, of the dry mass.</summary>
    public int MoisturePercent { get; init; }

    /// <summary>Heavier pieces are not lifted by hand, kg; null where the catalog names no limit.</summary>
    public double? LiftLimit { get; init; }

    /// <summary>Units more, of all that are laid or sawn.</summary>
    public int UnitWastePercent { get; init; }

    /// <summary>Grout and concrete more.</summary>
    public int GroutWastePercent { get; init; }

    public CoredUnits Cored { get; init; }

    public ImmutableArray<PalletContent> Pallets { get; init; } = [];

    /// <summary>Null where packs are not set out.</summary>
    public StagingData? Staging { get; init; }

    public MortarData JointMortar { get; init; } = new(null, null, 0, null, null);

    public MortarData LevellingMortar { get; init; } = new(null, null, 0, null, null);
}
