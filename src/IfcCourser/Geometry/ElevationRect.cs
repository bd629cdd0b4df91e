using IfcCourser.Units;

namespace IfcCourser.Geometry;

/// <summary>An upright rectangle in a wall's elevation.</summary>
public readonly record struct ElevationRect(Length Left, Length Right, Length Bottom, Length Top)
{
    public Length Width => Right - Left;

    public Length Height => Top - Bottom;

    /// <summary>Whether both share some height (more than touching).</summary>
    public bool StandsBeside(ElevationRect other) => Bottom < other.Top && other.Bottom < Top;

    public ElevationRect ShiftedBy(Length along, Length up) =>
        new(Left + along, Right + along, Bottom + up, Top + up);
}
