using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Tests.Support;

/// <summary>Draws a course as a corpus under fixtures/coursing does: [piece] &lt;opening&gt; {lintel} (movement joint), from left to right.</summary>
internal static class CorpusDrawing
{
    public static string Of(WallLayout wall, Course course, UnitSystem units)
    {
        bool InCourse(Length bottom, Length top) => bottom < course.Top && top > course.Bottom;

        var pieces = course.Pieces.Select(piece => (piece.From, Text: $"[{Number(piece.Length, units)}]"));
        var openings = wall.Openings.Where(opening => opening.Interrupts && InCourse(opening.Placed.Bottom, opening.Placed.Top))
            .Select(opening => (From: opening.Placed.Left, Text: $"<{Number(opening.Placed.Width, units)}>"));
        var lintels = wall.Lintels.Where(lintel => InCourse(lintel.Bottom, lintel.Top))
            .Select(lintel => (lintel.From, Text: $"{{{Number(lintel.To - lintel.From, units)}}}"));
        var joints = wall.MovementJoints.Where(joint => InCourse(joint.Bottom, joint.Top))
            .Select(joint => (From: joint.Rect.Left, Text: $"({Number(joint.Width, units)})"));
        return string.Concat(pieces.Concat(openings).Concat(lintels).Concat(joints).OrderBy(thing => thing.From).Select(thing => thing.Text));
    }

    private static string Number(Length length, UnitSystem units) => units == UnitSystem.Inch
        ? LengthText.Format(length, units).TrimEnd('"').Replace(" ", string.Empty, StringComparison.Ordinal)
        : LengthText.Format(length, units);
}
