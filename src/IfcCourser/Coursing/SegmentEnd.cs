using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>An end of a segment.</summary>
/// <param name="CutCost">Cost of a piece at this end that is cut.</param>
/// <param name="Raked">How far from this end the wall's top slopes within the course; pieces there are cut whatever their length.</param>
/// <param name="Least">Length that keeps the shorter edge at this end at the least piece, under a slope or where the end is on a slant; zero where it is upright and square.</param>
internal readonly record struct SegmentEnd(long CutCost, Length Raked, Length Least)
{
    public static SegmentEnd Upright(long cutCost) => new(cutCost, Length.Zero, Length.Zero);

    /// <summary>
    /// Length of a piece whose one edge is so much shorter, when that edge is to keep the least piece; where no piece is so long, what comes
    /// nearest: the unit, or half of what is longer than one.
    /// </summary>
    public static Length LeastWith(Length shorter, Length size, Length least, Length unit) => Length.Min(shorter + least, Length.Min(unit, size <= unit ? size : size / 2));

    /// <summary>The end where it is on a slant across the thickness.</summary>
    /// <param name="least">Length that keeps the shorter face at the least piece.</param>
    public SegmentEnd OnSlant(Length least) => this with { Least = Length.Max(Least, least) };
}
