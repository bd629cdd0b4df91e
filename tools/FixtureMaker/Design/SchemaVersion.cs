namespace FixtureMaker.Design;

/// <summary>The IFC schema a house's file is written in.</summary>
internal enum SchemaVersion
{
    Ifc2X3,
    Ifc4,
    Ifc4X3,
}
