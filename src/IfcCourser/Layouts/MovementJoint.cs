using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A vertical joint over the wall's height that lets panels move.</summary>
/// <param name="At">Its middle, along the run.</param>
/// <param name="Why">panel, opening, height, thickness or given.</param>
public sealed record MovementJoint(Length At, Length Width, Length Bottom, Length Top, string Why)
{
    public ElevationRect Rect => new(At - (Width / 2), At + (Width / 2), Bottom, Top);
}
