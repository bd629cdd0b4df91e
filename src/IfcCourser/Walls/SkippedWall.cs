using IfcCourser.Findings;

namespace IfcCourser.Walls;

/// <summary>A wall of the model that is not laid out, and why; its body where it could be read.</summary>
public sealed record SkippedWall(WallIdentity Identity, Finding Reason, BodyFacts? Body);
