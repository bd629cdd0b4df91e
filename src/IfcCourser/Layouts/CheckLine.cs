using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>An edge, face or grid line parallel to one of the axes.</summary>
/// <param name="IsUpright">Whether it runs along y, so that its x is measured.</param>
/// <param name="At">That x or y.</param>
/// <param name="From">One end, model axes, mm.</param>
/// <param name="To">The other end.</param>
public sealed record CheckLine(ControlLine Line, bool IsUpright, Length At, Vector2 From, Vector2 To);
