using IfcCourser.Geometry;

namespace IfcCourser.Walls;

/// <summary>A straight line of a building grid in plan, model axes, mm.</summary>
/// <param name="Tag">As on the grid's bubble.</param>
/// <param name="Family">U, V or W: lines of one family don't cross.</param>
public sealed record GridLine(string Tag, char Family, Vector2 From, Vector2 To)
{
    /// <summary>A unit vector.</summary>
    public Vector2 Direction => (To - From).Unit();
}
