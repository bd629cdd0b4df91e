using IfcCourser.Geometry;

namespace IfcCourser.Ifc.Bodies;

/// <summary>One item of a body.</summary>
/// <param name="StepId">Instance number of the representation item.</param>
/// <param name="Aspect">Name of the shape aspect that the item belongs to, such as its material constituent.</param>
/// <param name="Solid">In model axes, mm.</param>
public sealed record BodyItem(long StepId, string? Aspect, Solid Solid);
