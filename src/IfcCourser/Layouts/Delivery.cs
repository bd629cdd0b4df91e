using System.Collections.Immutable;

namespace IfcCourser.Layouts;

/// <summary>What comes in one delivery, with waste and whole packs of its own.</summary>
public sealed record Delivery(DeliveryPhase Phase, JointSums Joints, ImmutableArray<OrderLine> Lines);
