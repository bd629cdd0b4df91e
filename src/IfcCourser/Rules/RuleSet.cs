using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>
/// What a code, standard or trade asks of a layout, as read from a rule file. Values may depend on the catalog
/// (a share of its pitch, a function of its unit height); <see cref="LayoutRules"/> is the set applied to one catalog.
/// </summary>
public sealed record RuleSet
{
    public required string Name { get; init; }

    public required string Title { get; init; }

    /// <summary>Where the set does not apply, said aloud with every run that uses it.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>Sources behind the values, one line each: key, standard, edition, clause, how sure.</summary>
    public required ImmutableArray<string> Sources { get; init; }

    /// <summary>Names of the layers of drawings; null where the catalog's units decide.</summary>
    public LayerNames? Layers { get; init; }

    public required OverlapRule MinOverlap { get; init; }

    /// <summary>The preferred lap: the wall's thickness where it lies in this range...</summary>
    public required Interval<Length>? PreferThicknessLap { get; init; }

    /// <summary>... else this share of the pitch, in percent.</summary>
    public required int PreferredLapPercent { get; init; }

    /// <summary>Least piece that the rule asks for; the catalog's counts where larger.</summary>
    public required Length LeastPiece { get; init; }

    /// <summary>Least lintel bearing that the rule asks for; the catalog's counts where larger.</summary>
    public required Length LeastBearing { get; init; }

    public required Length ModuleTolerance { get; init; }

    /// <summary>Largest shift of a jamb, in percent of the module.</summary>
    public required int MaxShiftPercent { get; init; }

    public required Datum Datum { get; init; }

    /// <summary>Where the building grid's module lines cross, in model axes, for <see cref="Datum.Grid"/>.</summary>
    public required GridOrigin GridOrigin { get; init; }

    /// <summary>Whether openings that stand above each other with a jamb or their middles in line move together.</summary>
    public required bool StackOpenings { get; init; }

    /// <summary>The column of the catalog's lintel table that openings need: the engineer's choice.</summary>
    public required int LintelLoadClass { get; init; }

    /// <summary>What the masonry opening must be larger than the void, by kind.</summary>
    public required OpeningAllowances Allowances { get; init; }

    /// <summary>Voids with both sides under this are drilled: marked, not coursed around.</summary>
    public required Length DrilledUnder { get; init; }

    /// <summary>Height between wall ties at tees.</summary>
    public required TieRule Ties { get; init; }

    /// <summary>How abutting walls are joined at tees.</summary>
    public required TeeBuild Tees { get; init; }

    /// <summary>Movement joints; null where the set asks for none.</summary>
    public required MovementJointRule? MovementJoints { get; init; }

    /// <summary>What course lines are chosen for, the first aim counts most; each aim once.</summary>
    public required ImmutableArray<HeightAim> HeightAims { get; init; }

    public required StoreyStart StoreyStart { get; init; }

    /// <summary>Rests of a height or length up to this are left to mortar.</summary>
    public required Length MortarRest { get; init; }

    /// <summary>Gap under the slab left by non-bearing partitions.</summary>
    public required Length PartitionHeadGap { get; init; }

    /// <summary>Vertical bars; null where the set asks for none.</summary>
    public required BarRule? Bars { get; init; }

    /// <summary>Bond beams; null where the set asks for none.</summary>
    public required BondBeamRule? BondBeams { get; init; }

    /// <summary>How bars are listed and delivered.</summary>
    public BarList BarList { get; init; } = BarList.Plain;

    /// <summary>Usual distances of cast-in bars from a slab's edges; null where the set names none.</summary>
    public EdgeDistanceRule? EdgeDistances { get; init; }

    /// <summary>What slab, first course and bars are told beside on slab day.</summary>
    public SlabTolerances Tolerances { get; init; } = SlabTolerances.None;

    /// <summary>Membrane under first courses; null where the set asks for none.</summary>
    public MembraneRule? Membrane { get; init; }

    /// <summary>What the bond weighs against what.</summary>
    public required BondAims Aims { get; init; }
}
