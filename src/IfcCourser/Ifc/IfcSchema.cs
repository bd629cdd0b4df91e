namespace IfcCourser.Ifc;

/// <summary>The IFC schemas that are read, oldest first.</summary>
public enum IfcSchema
{
    Ifc2X3,
    Ifc4,
    Ifc4X3,
}
