using IfcCourser.Geometry;
using IfcCourser.Layouts;

namespace IfcCourser.Runs;

/// <summary>A course that must be a bond beam, over its length or beside an opening.</summary>
/// <param name="Course">Index of the course; null where none can be one.</param>
/// <param name="Why">top, corner, height, spacing, over-opening or under-opening.</param>
/// <param name="Opening">The opening that asks for it; null for a beam over the course's length.</param>
internal sealed record BeamRequest(int? Course, string Why, OpeningLayout? Opening)
{
    /// <summary>From jamb to jamb.</summary>
    public Interval? Jambs => Opening is { } opening ? new Interval(opening.Placed.Left, opening.Placed.Right) : null;
}
