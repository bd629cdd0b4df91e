using IfcCourser.Catalogs;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// The course lines that a level group shares, in model heights: courses of unit height on bed joints, endlessly up and
/// down; some of them may be make-up courses of another height.
/// </summary>
/// <param name="Start">Underside of the course on line 0.</param>
/// <param name="UnitHeight">Height of all other courses.</param>
/// <param name="Joint">The bed joint.</param>
/// <param name="MakeUp">The make-up courses, where there are any.</param>
internal sealed record CourseLines(Length Start, Length UnitHeight, Length Joint, MakeUpCourse? MakeUp)
{
    public CourseLines(Length start, Catalog catalog, MakeUpCourse? makeUp = null)
        : this(start, catalog.UnitHeight, catalog.BedJoint.Nominal, makeUp)
    {
    }

    private Length Pitch => UnitHeight + Joint;

    /// <summary>Underside of the course on a line.</summary>
    public Length Bottom(int line) =>
        Start + (Pitch * line) - (MakeUp is { } makeUp ? (UnitHeight - makeUp.Height) * makeUp.Below(line) : Length.Zero);

    public Length Height(int line) => MakeUp is { } makeUp && makeUp.Below(line + 1) > makeUp.Below(line) ? makeUp.Height : UnitHeight;

    public Length Top(int line) => Bottom(line) + Height(line);

    /// <summary>The highest line whose course has its underside below a height.</summary>
    public int LineBelow(Length height)
    {
        var line = PlainLineBelow(height - Start);
        if (MakeUp is not { } makeUp || line < makeUp.Line)
        {
            return line;
        }

        var above = makeUp.LineAbove;
        return height > Bottom(above)
            ? above + PlainLineBelow(height - Bottom(above))
            : makeUp.Line + Enumerable.Range(1, makeUp.Courses - 1).Count(course => height > Bottom(makeUp.Line + course));
    }

    /// <summary>The same lines, numbered from another one.</summary>
    public CourseLines CountedFrom(int line) => this with
    {
        Start = Bottom(line),
        MakeUp = MakeUp is { } makeUp && makeUp.Below(line) == 0 ? makeUp with { Line = makeUp.Line - line } : MakeUpFrom(line),
    };

    /// <summary>What is left of the make-up courses from a line on.</summary>
    private MakeUpCourse? MakeUpFrom(int line) => MakeUp is { } makeUp && makeUp.LineAbove > line
        ? new MakeUpCourse(0, makeUp.Height, makeUp.LineAbove - line)
        : null;

    private int PlainLineBelow(Length above) => checked((int)((above.CeilingTo(Pitch) / Pitch) - 1));
}
