namespace FixtureMaker.Design;

/// <summary>A declared connection of two walls (IfcRelConnectsPathElements): which wall, and where on it.</summary>
internal sealed record PathJoint(string First, PathPlace FirstAt, string Second, PathPlace SecondAt);
