using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser;

/// <summary>Every message of the solver that a user reads.</summary>
internal static class Messages
{
    public const string FormedBeam = "formed beam";

    public static string NoCourseForLintel(string opening) =>
        FormattableString.Invariant($"No course of the wall stands above the head of {opening} to carry a lintel");

    public static string BearingShort(Length bearing, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"The lintel bears on {Text(bearing, units)} only; {Text(wanted, units)} are asked for");

    public static string LintelFormed(Length span, UnitSystem units) =>
        FormattableString.Invariant($"No lintel of the catalog spans {Text(span, units)}; a formed beam takes its place: to be designed, formed and shored");

    public static string LintelLacksCourse(string product, Length left, UnitSystem units) =>
        FormattableString.Invariant($"Only {Text(left, units)} of masonry stand in the course above the head, too low for {product}; a formed beam takes its place");

    public static string OverlapShort(int course, Length lap, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"Courses {course - 1} and {course} lap {Text(lap, units)} only; {Text(wanted, units)} are asked for");

    public static string PieceShort(string piece, Length length, Length least, UnitSystem units) =>
        FormattableString.Invariant($"Piece {piece} is {Text(length, units)} long, under the least piece of {Text(least, units)}");

    public static string RipThin(string piece, Length height, Length least, UnitSystem units) =>
        FormattableString.Invariant($"Piece {piece} is {Text(height, units)} high, under the least rip of {Text(least, units)}");

    public static string HeightOffCourse(ImmutableArray<(int Number, Length Height)> cut, Length? lower, Length higher, UnitSystem units)
    {
        var numbers = string.Join(" and ", cut.Select(course => FormattableString.Invariant($"{course.Number}")));
        var heights = string.Join(" and ", cut.Select(course => Text(course.Height, units)));
        return $"{(cut.Length == 1 ? $"Course {numbers} is" : $"Courses {numbers} are")} ripped to {heights}; {WholeCourses(lower, higher, units)}";
    }

    public static string TopOpen(Length gap, Length? lower, Length higher, UnitSystem units) =>
        $"{Text(gap, units)} are left open above the last course; {WholeCourses(lower, higher, units)}";

    public static string HeadGap(Length gap, UnitSystem units) =>
        $"The wall does not carry: a head gap of {Text(gap, units)} is left open above its last course";

    public static string SlabStep(string first, string second, Length step, Length lower, Length higher, UnitSystem units) =>
        $"{first} and {second} meet with bases {Text(step, units)} apart and can't share course lines; {WorkingSteps(lower, higher, units)}";

    public static string StoreyStep(string lowerWall, string upperWall, Length step, Length lower, Length higher, UnitSystem units) =>
        $"{upperWall} can't run on with the course lines of {lowerWall} under it, with bases {Text(step, units)} apart; {WorkingSteps(lower, higher, units)}";

    public static string StandsOnWall(Length bed, UnitSystem units) =>
        $"The first course lies on the wall under it, on a bed of {Text(bed, units)} above its top";

    public static string StripOpen(double squareMetres) =>
        FormattableString.Invariant($"{squareMetres:0.0000} m2 in strips too small for a piece are left to mortar");

    public static string CrossedBy(string wall) =>
        FormattableString.Invariant($"The crossing wall {wall} runs through this wall");

    public static string BedOutOfRange(Length bed, LengthRange range, UnitSystem units) =>
        FormattableString.Invariant($"The levelling bed is {Text(bed, units)}, outside {Text(range.Min, units)} to {Text(range.Max, units)}");

    public static string LowerThanOneCourse(Length height, Length least, UnitSystem units) =>
        $"The wall is {Text(height, units)} high, too low for a bed and a course, which take {Text(least, units)}";

    public static string OpeningMoved(string name, Length along, Length sill, Length head, UnitSystem units) =>
        FormattableString.Invariant($"{name} moved {Signed(along, units)} along the wall, sill {Signed(sill, units)}, head {Signed(head, units)}; awaits the designer's consent");

    public static string OpeningResized(string name, Length left, Length right, Length sill, Length head, UnitSystem units) =>
        FormattableString.Invariant($"{name} changed: left jamb {Signed(left, units)}, right jamb {Signed(right, units)}, sill {Signed(sill, units)}, head {Signed(head, units)}; awaits the designer's consent");

    public static string OffModule(string name, Length move, UnitSystem units) =>
        FormattableString.Invariant($"{name} is off the module: moved by {Signed(move, units)} it stands on it");

    public static string OffModule(string name, Length move, Length widen, UnitSystem units) =>
        move == Length.Zero
            ? FormattableString.Invariant($"{name} is off the module: widened by {Text(widen, units)} it stands on it")
            : FormattableString.Invariant($"{name} is off the module: with its left jamb moved by {Signed(move, units)} and widened by {Text(widen, units)} it stands on it");

    public static string HeadOffCourse(string name, Length up, UnitSystem units) =>
        FormattableString.Invariant($"The head of {name} lies {Text(up, units)} under the next course line");

    public static string HeadAboveCourses(string name, Length above, UnitSystem units) =>
        $"The head of {name} lies {Text(above, units)} above the last course line";

    public static string SillOffCourse(string name, Length? above, Length? below, UnitSystem units)
    {
        var places = new[]
        {
            above is { } up ? $"{Text(up, units)} above the top of a course" : null,
            below is { } down ? $"{Text(down, units)} below the top of a course" : null,
        };
        return $"The sill of {name} lies {string.Join(" and ", places.OfType<string>())}";
    }

    public static string PierShort(Length pier, Length least, UnitSystem units) =>
        FormattableString.Invariant($"A pier of {Text(pier, units)} is under the least pier of {Text(least, units)}");

    public static string CoreOnJoint(string core, int course, Length distance, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"Core {core} stands {Text(distance, units)} from a head joint of course {course}; {Text(wanted, units)} are asked for");

    public static string NoRoomForBar(string why) =>
        FormattableString.Invariant($"No masonry of this wall has room for the bar that its {why} asks for");

    public static string NoCoreInThinWall(Length thickness, UnitSystem units) =>
        FormattableString.Invariant($"The wall is {Text(thickness, units)} thick: too thin for a core, so it has no bars");

    private static string WholeCourses(Length? lower, Length higher, UnitSystem units) =>
        $"a wall {(lower is { } height ? $"{Text(height, units)} or " : string.Empty)}{Text(higher, units)} high takes whole courses";

    private static string WorkingSteps(Length lower, Length higher, UnitSystem units) =>
        $"a step of {Text(lower, units)} or {Text(higher, units)} would do";

    private static string Text(Length length, UnitSystem units) => LengthText.WithUnit(length, units);

    private static string Signed(Length length, UnitSystem units) => length > Length.Zero ? "+" + Text(length, units) : Text(length, units);
}
