namespace IfcCourser.Rules;

/// <summary>
/// What the bond weighs against what once its hard rules hold: whole numbers, each larger than all that follow can sum up to
/// on a course. The order is the layout man's (common practice, no source); a rule set may set others.
/// </summary>
/// <param name="Bearing">Less than a full unit, or bearing and least piece, under a lintel's bearing.</param>
/// <param name="ShortAtRake">A piece under a slope, or at an end on a slant, whose shorter edge is less than the least piece.</param>
/// <param name="Cut">A piece that has to be cut.</param>
/// <param name="CutAtJamb">A cut piece at a jamb or under a bearing.</param>
/// <param name="Short">A piece shorter than preferred.</param>
/// <param name="NotRepeated">A joint that does not stand over the one two courses below.</param>
/// <param name="CutAtEnd">A cut piece at a wall's end or corner: the closer belongs mid-run.</param>
/// <param name="LapUnderPreferred">A joint that laps less than preferred.</param>
/// <param name="JointStep">A step of the cut grid by which a head joint differs from its nominal width.</param>
public sealed record BondAims(
    long Bearing, long ShortAtRake, long Cut, long CutAtJamb, long Short, long NotRepeated, long CutAtEnd, long LapUnderPreferred, long JointStep)
{
    /// <summary>A broken hard rule: a lap too short, a piece under the least, a core too near a joint. No sum of aims reaches it.</summary>
    public const long Breach = 100_000_000_000_000;
}
