using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>The circle that a curved wall's run goes around in plan.</summary>
/// <param name="Centre">Model axes, mm; on the left of a run that turns left.</param>
/// <param name="Radius">Of the masonry layer's centre line, along which the run is measured.</param>
public sealed record WallCurve(Vector2 Centre, Length Radius);
