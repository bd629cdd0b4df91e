using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>
/// The module lines of a wall. Masonry starts on d + k p and ends on d + k p - j, so an opening's left jamb (a masonry
/// end) stands on d + k p - j and its right jamb (a masonry start) on d + k p.
/// </summary>
internal readonly record struct ModuleGrid(ModuleLines Lines, Length Joint)
{
    /// <summary>How far a left jamb must move to the nearest line; negative to the left.</summary>
    public Length LeftJambToLine(Length jamb) => ToLine(jamb + Joint);

    /// <summary>How far a right jamb must move to the nearest line.</summary>
    public Length RightJambToLine(Length jamb) => ToLine(jamb);

    private Length ToLine(Length place)
    {
        var rest = (place - Lines.Start).Modulo(Lines.Pitch);
        return rest * 2 <= Lines.Pitch ? -rest : Lines.Pitch - rest;
    }
}
