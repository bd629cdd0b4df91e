namespace IfcCourser.Output.Bcf;

/// <summary>A model that a topic is about.</summary>
/// <param name="IfcProject">GlobalId of its project.</param>
/// <param name="SpatialElement">GlobalId of the storey or another part of it.</param>
public sealed record BcfHeaderFile(string? IfcProject, string? SpatialElement, bool IsExternal, string? Name, string? Date, string? Reference);
