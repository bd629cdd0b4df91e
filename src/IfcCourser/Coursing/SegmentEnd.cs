using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>An end of a segment.</summary>
/// <param name="CutCost">Cost of a piece at this end that is cut.</param>
/// <param name="Raked">How far from this end the wall's top slopes within the course; pieces there are cut whatever their length.</param>
/// <param name="Least">Length that keeps the shorter edge of a raked piece at this end at the least piece; zero where nothing slopes.</param>
internal readonly record struct SegmentEnd(long CutCost, Length Raked, Length Least)
{
    public static SegmentEnd Upright(long cutCost) => new(cutCost, Length.Zero, Length.Zero);
}
