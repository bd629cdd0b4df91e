using System.Collections.Immutable;

namespace IfcCourser.Layouts;

/// <summary>What a wall or a storey takes, without waste and packs: those are reckoned over the job.</summary>
/// <param name="Name">GlobalId of the wall; name of the storey, null for walls that no storey holds.</param>
public sealed record OrderGroup(string? Name, JointSums Joints, ImmutableArray<OrderLine> Lines);
