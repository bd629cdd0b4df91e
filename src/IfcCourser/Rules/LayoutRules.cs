using IfcCourser.Catalogs;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>A rule set applied to a catalog and to the options of the run: numbers only, what the solver works with.</summary>
public sealed record LayoutRules
{
    public required RuleSet Set { get; init; }

    public required Catalog Catalog { get; init; }

    public required OpeningPolicy Openings { get; init; }

    public required Length MinOverlap { get; init; }

    public required Length MinPiece { get; init; }

    public required Length PreferredPiece { get; init; }

    public required Length LintelBearing { get; init; }

    public required Length Module { get; init; }

    public required Length ModuleTolerance { get; init; }

    public required Length MaxShift { get; init; }

    /// <summary>Least distance of a core's centre from a head joint's centre; zero where the catalog has no cores.</summary>
    public required Length CoreClearance { get; init; }

    /// <summary>The rules of a wall that is curved in plan: head joints on its centre line leave room to open towards the outer face.</summary>
    /// <param name="radius">Of the centre line.</param>
    public LayoutRules Around(Length radius, Length thickness) =>
        CurvedJoints.On(Catalog, radius, thickness) is { } joints ? this with { Catalog = Catalog with { HeadJoint = joints } } : this;

    public static LayoutRules For(RuleSet set, Catalog catalog, OpeningPolicy openings, Length? maxShift = null) => new()
    {
        Set = set,
        Catalog = catalog,
        Openings = openings,
        MinOverlap = set.MinOverlap.For(catalog),
        MinPiece = Length.Max(catalog.MinPiece, set.LeastPiece),
        PreferredPiece = Length.Max(catalog.PreferredPiece, set.LeastPiece),
        LintelBearing = Length.Max(catalog.LintelBearing, set.LeastBearing),
        Module = catalog.Module,
        ModuleTolerance = set.ModuleTolerance,
        MaxShift = maxShift ?? (catalog.Module * set.MaxShiftPercent / 100),
        CoreClearance = catalog.Cores.IsEmpty ? Length.Zero : catalog.Cores.Max(core => core.Clearance),
    };

    /// <summary>Of bar lists: the set's, else metric beside a metric catalog.</summary>
    public BarListForm BarListForm => Set.BarList.Form ?? (Catalog.Units == UnitSystem.Metric ? BarListForm.Bs8666 : BarListForm.Aci315);

    /// <summary>
    /// The lap a layout man would choose for a wall of this thickness: as corners bond, where what is left of the pitch
    /// laps enough as well.
    /// </summary>
    public Length PreferredLap(Length thickness) =>
        Set.PreferThicknessLap is { } range && thickness >= range.Least && thickness <= range.Largest
            && thickness + MinOverlap <= Catalog.Pitch
            ? thickness
            : Catalog.Pitch * Set.PreferredLapPercent / 100;
}
