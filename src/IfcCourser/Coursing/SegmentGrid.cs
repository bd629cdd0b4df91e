using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A segment on the cut grid. What it is off the grid goes into the last joint or, where joints have no play, into the last piece.</summary>
/// <param name="Target">Cells from its start to its end.</param>
/// <param name="Slide">What the last joint gets wider or narrower by, so that the last piece ends at the segment's end.</param>
/// <param name="Narrowest">Least last joint, in cells, that leaves room for the slide.</param>
/// <param name="Widest">Largest last joint, in cells, that leaves room for the slide.</param>
/// <param name="LastIsCut">Whether the last piece is cut off the grid, so that no whole piece may stand there.</param>
internal readonly record struct SegmentGrid(int Target, Length Slide, int Narrowest, int Widest, bool LastIsCut)
{
    public static SegmentGrid Of(Length size, CellSizes sizes)
    {
        var whole = sizes.Of(size);
        var rest = size - (sizes.Cell * whole);
        var (least, most) = (sizes.JointMin, sizes.JointMax);
        if (rest == Length.Zero)
        {
            return new SegmentGrid(whole, Length.Zero, least, most, LastIsCut: false);
        }

        return sizes.Joint < most ? new SegmentGrid(whole, rest, least, most - 1, LastIsCut: false)
            : sizes.Joint > least ? new SegmentGrid(whole + 1, rest - sizes.Cell, least + 1, most, LastIsCut: false)
            : new SegmentGrid(whole, Length.Zero, least, most, LastIsCut: true);
    }

    /// <summary>Whether a joint may be the last one.</summary>
    public bool MayBeLast(int joint) => joint >= Narrowest && joint <= Widest;
}
