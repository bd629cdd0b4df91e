namespace IfcCourser.Output.Bcf;

/// <summary>A viewpoint of a topic: names of its files in the topic's folder.</summary>
/// <param name="View">The camera and components (.bcfv).</param>
/// <param name="Snapshot">The picture.</param>
public sealed record BcfViewpoint(string Guid, string? View, string? Snapshot, int? Index);
