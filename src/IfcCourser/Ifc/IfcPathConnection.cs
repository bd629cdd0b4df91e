namespace IfcCourser.Ifc;

/// <summary>A path connection seen from one of its walls.</summary>
/// <param name="OtherStepId">Instance number of the other wall.</param>
/// <param name="OwnPlace">ATSTART, ATEND, ATPATH or NOTDEFINED on this wall.</param>
/// <param name="OtherPlace">The same on the other wall.</param>
public sealed record IfcPathConnection(long OtherStepId, string OwnPlace, string OtherPlace);
