using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Modules;
using IfcCourser.Units;

namespace IfcCourser.Panels;

/// <summary>A stretch of a wall's run that movement joints are to divide into panels; joints are told by their centres.</summary>
/// <param name="Run">The stretch.</param>
/// <param name="Limits">How long panels may be.</param>
/// <param name="Least">Least distance between two joints.</param>
/// <param name="Width">Of a joint.</param>
/// <param name="Free">Where a joint may stand, from left to right.</param>
/// <param name="Wanted">Stretches that each ask for a joint.</param>
/// <param name="Lines">The wall's module lines.</param>
internal sealed record PanelTask(
    Interval Run,
    PanelLengths Limits,
    Length Least,
    Length Width,
    ImmutableArray<Interval> Free,
    ImmutableArray<Interval> Wanted,
    ModuleGrid Lines)
{
    /// <summary>The score of a panel and of the joint at its end, if one stands there; null where it is too short.</summary>
    public PanelScore? Of(Length from, Length to)
    {
        var (isFirst, isLast) = (from == Run.From, to == Run.To);
        if (to - from < Least && !(isFirst && isLast))
        {
            return null;
        }

        var longest = isFirst && isLast ? Limits.Whole : isFirst ? Limits.First : isLast ? Limits.Last : Limits.Between;
        var size = (Int128)(to - from).Nanometres;
        return new PanelScore(
            Wanted.Count(wanted => wanted.From > from && wanted.To < to),
            Length.Max(to - from - longest, Length.Zero),
            isLast ? 0 : 1,
            isLast ? 0 : FacesOffLines(to),
            size * size);
    }

    /// <summary>How many faces of a joint stand off the module lines: masonry starts on a line and ends a head joint before one.</summary>
    private int FacesOffLines(Length at) =>
        (Lines.LeftJambToLine(at - (Width / 2)) == Length.Zero ? 0 : 1) + (Lines.RightJambToLine(at + (Width / 2)) == Length.Zero ? 0 : 1);
}
