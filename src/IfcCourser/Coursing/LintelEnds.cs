using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Where a lintel ends: a bearing beyond the jambs, and on to whatever stands there where less than the least piece would
/// be left. One that is made in lengths lies in the middle where it can.
/// </summary>
internal sealed class LintelEnds(LayoutRules rules)
{
    private readonly Length _joint = rules.Catalog.HeadJoint.Nominal;

    /// <param name="lintel">The product; null for a formed beam.</param>
    /// <param name="over">From the first left to the last right jamb.</param>
    /// <param name="free">How far it may reach.</param>
    /// <returns>Its run; null where no length of it fits.</returns>
    public Interval? Of(LintelProduct? lintel, Interval over, Interval free)
    {
        var bearing = LintelChoice.BearingOf(lintel, rules);
        return lintel is { Lengths.IsEmpty: false }
            ? OfLengths(lintel, bearing, over, free)
            : new Interval(
                over.From - Reach(bearing, over.From - free.From),
                over.To + Reach(bearing, free.To - over.To));
    }

    /// <summary>How far beyond a jamb a lintel of any length goes, given the room there.</summary>
    private Length Reach(Length bearing, Length room) => IsLeft(room - bearing) ? bearing : room;

    /// <summary>Whether a lintel's end may leave this much: a joint and the least piece.</summary>
    private bool IsLeft(Length rest) => rest >= _joint + rules.MinPiece;

    /// <summary>The shortest length with its bearings, nearest to the middle, that leaves nothing or the least piece at both ends.</summary>
    private Interval? OfLengths(LintelProduct lintel, Length bearing, Interval over, Interval free)
    {
        foreach (var length in lintel.Lengths.Where(length => length <= free.Size))
        {
            var least = Length.Max(free.From, over.To + bearing - length);
            var most = Length.Min(over.From - bearing, free.To - length);
            var middle = (over.From + ((over.Size - length) / 2)).RoundTo(rules.Catalog.CutGrid);
            var leaves = new[] { middle, least, most, free.From, free.To - length, free.From + _joint + rules.MinPiece, free.To - length - _joint - rules.MinPiece }
                .Where(from => from >= least && from <= most && Leaves(from - free.From) && Leaves(free.To - from - length))
                .OrderBy(from => Length.Abs(from - middle)).ThenBy(from => from)
                .ToList();
            if (leaves.Count > 0)
            {
                return new Interval(leaves[0], leaves[0] + length);
            }
        }

        return null;
    }

    private bool Leaves(Length rest) => rest == Length.Zero || IsLeft(rest);
}
