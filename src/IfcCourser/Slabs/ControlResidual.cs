using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>How far a control point lies off its place after the fit.</summary>
/// <param name="Point">Its number.</param>
/// <param name="Place">Where it should be, model axes, mm.</param>
/// <param name="Off">Model axes, mm.</param>
public sealed record ControlResidual(string Point, Vector2 Place, Vector2 Off);
