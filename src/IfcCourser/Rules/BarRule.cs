using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Which vertical bars a wall must have, where they may stand and how they are built; distances are to the bar's centre.</summary>
public sealed record BarRule
{
    /// <summary>From a wall's free end or the end of one that abuts; corners share one bar where their walls cross.</summary>
    public required Interval<Length> FromEnd { get; init; }

    /// <summary>From an opening's jamb; a solid lintel's bearing is passed over.</summary>
    public required Interval<Length> FromJamb { get; init; }

    /// <summary>From each face of a movement joint.</summary>
    public required Interval<Length> FromMovementJoint { get; init; }

    /// <summary>Farthest from the middle of a wall that abuts, to either side; null where a main wall needs no bar there.</summary>
    public required Length? FromTee { get; init; }

    /// <summary>Between bars that stand beside each other at the same height.</summary>
    public required Length LargestSpacing { get; init; }

    /// <summary>Strips of masonry lower than this, such as those under sills and over heads, need no bars for the spacing.</summary>
    public required Length SpacingFromHeight { get; init; }

    /// <summary>Openings smaller than this both ways need no bars.</summary>
    public required Length OpeningsFrom { get; init; }

    /// <summary>Openings of a smaller area need no bars, cm2.</summary>
    public required int OpeningsFromCm2 { get; init; }

    /// <summary>Thinner walls have no cores.</summary>
    public required Length LeastWall { get; init; }

    /// <summary>Of the unit, left beside a core.</summary>
    public required Length LeastShell { get; init; }

    /// <summary>Least diameter of a core.</summary>
    public required Length LeastCore { get; init; }

    public required BarSize Bar { get; init; }

    public required int BarsInCore { get; init; }

    /// <summary>Standard and grade, for schedules.</summary>
    public required string Steel { get; init; }

    public required BarSplice Splice { get; init; }

    public required BarStarter Starter { get; init; }

    public required BarLengths Lengths { get; init; }

    /// <summary>Most height of grout placed at once.</summary>
    public required Length GroutLift { get; init; }

    /// <summary>
    /// Most height of grout placed at once where the office has it that the masonry has cured and the grout is as wet as the standard asks: up to the lowest bond beam further up than
    /// <see cref="GroutLift"/>. Null where that is not promised.
    /// </summary>
    public required Length? GroutLiftCured { get; init; }

    /// <summary>Places that the user gives, under a girder for one.</summary>
    public required ImmutableArray<GivenBar> Given { get; init; }

    /// <summary>Where the rules do not apply, a sentence each.</summary>
    public required ImmutableArray<string> NotFor { get; init; }

    /// <summary>Where the values come from.</summary>
    public required ImmutableArray<RuleSource> Sources { get; init; }

    /// <summary>Whether an opening of this size has bars at its sides.</summary>
    public bool AsksAtOpening(Length width, Length height) =>
        (width >= OpeningsFrom || height >= OpeningsFrom) && width.Mm * height.Mm >= OpeningsFromCm2 * 100d;

    /// <summary>Of what stands in a core: No. 4, or 4 x 10 mm.</summary>
    public string Designation => BarsInCore == 1 ? Bar.Name : FormattableString.Invariant($"{BarsInCore} x {Bar.Name}");

    /// <summary>How far two bars lap.</summary>
    public Length Lap => Splice.Lap(Bar);
}
