using IfcCourser.Geometry;

namespace IfcCourser.Walls;

/// <summary>The wall's whole body as the model has it, all layers, before any corner rule.</summary>
/// <param name="NetVolume">m3, openings cut.</param>
/// <param name="GrossVolume">m3, openings not cut.</param>
/// <param name="Min">Least corner of the net body's box, model axes, mm.</param>
/// <param name="Max">Largest corner of the net body's box, model axes, mm.</param>
public sealed record BodyFacts(double NetVolume, double GrossVolume, Vector3 Min, Vector3 Max);
