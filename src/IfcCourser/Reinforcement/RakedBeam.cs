using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>A bond beam formed along a sloping top.</summary>
/// <param name="Run">Along the wall.</param>
/// <param name="Outline">In the wall's elevation, counter-clockwise.</param>
/// <param name="Area">m2.</param>
/// <param name="Slope">Length along the slope.</param>
internal sealed record RakedBeam(Interval Run, ImmutableArray<ElevationPoint> Outline, double Area, Length Slope);
