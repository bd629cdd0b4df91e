using IfcCourser.Catalogs;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// The course lines that a level group shares, in model heights: courses of unit height on bed joints, endlessly up and
/// down; one of them may be a make-up course of another unit height of the catalog.
/// </summary>
/// <param name="Start">Underside of the course on line 0.</param>
/// <param name="UnitHeight">Height of all other courses.</param>
/// <param name="Joint">The bed joint.</param>
/// <param name="MakeUp">The line that carries the make-up course, and its height.</param>
internal sealed record CourseLines(Length Start, Length UnitHeight, Length Joint, (int Line, Length Height)? MakeUp)
{
    public CourseLines(Length start, Catalog catalog, (int Line, Length Height)? makeUp = null)
        : this(start, catalog.UnitHeight, catalog.BedJoint.Nominal, makeUp)
    {
    }

    private Length Pitch => UnitHeight + Joint;

    /// <summary>Underside of the course on a line.</summary>
    public Length Bottom(int line) =>
        Start + (Pitch * line) - (MakeUp is { } makeUp && line > makeUp.Line ? UnitHeight - makeUp.Height : Length.Zero);

    public Length Height(int line) => MakeUp is { } makeUp && line == makeUp.Line ? makeUp.Height : UnitHeight;

    public Length Top(int line) => Bottom(line) + Height(line);

    /// <summary>The highest line whose course has its underside below a height.</summary>
    public int LineBelow(Length height)
    {
        var line = PlainLineBelow(height - Start);
        if (MakeUp is not { } makeUp || line < makeUp.Line)
        {
            return line;
        }

        var above = makeUp.Line + 1;
        return height > Bottom(above) ? above + PlainLineBelow(height - Bottom(above)) : makeUp.Line;
    }

    /// <summary>The same lines, numbered from another one.</summary>
    public CourseLines CountedFrom(int line) => this with
    {
        Start = Bottom(line),
        MakeUp = MakeUp is { } makeUp && makeUp.Line >= line ? (makeUp.Line - line, makeUp.Height) : null,
    };

    private int PlainLineBelow(Length above) => checked((int)((above.CeilingTo(Pitch) / Pitch) - 1));
}
