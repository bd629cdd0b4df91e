namespace IfcCourser.Ifc.Bodies;

/// <summary>A solid item of a body that could not be read: its kind is not read, or its faces do not close.</summary>
/// <param name="StepId">Instance number of the representation item.</param>
/// <param name="HasBentFaces">Whether that is because faces bend both ways, as on a sphere, and are not followed.</param>
public sealed record UnreadItem(long StepId, bool HasBentFaces);
