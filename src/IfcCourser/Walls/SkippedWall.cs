using IfcCourser.Findings;

namespace IfcCourser.Walls;

/// <summary>A wall of the model that is not laid out.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Body">Its body where that could be read.</param>
/// <param name="Choice">What was taken for its masonry, and why; null for walls of no model.</param>
public sealed record SkippedWall(WallIdentity Identity, Finding Reason, BodyFacts? Body, MasonryChoice? Choice = null);
