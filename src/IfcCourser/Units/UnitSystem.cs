namespace IfcCourser.Units;

/// <summary>The units that drawings, tables and messages of a catalog are written in.</summary>
public enum UnitSystem
{
    /// <summary>Millimetres.</summary>
    Metric,

    /// <summary>Feet and inches with sixteenths.</summary>
    Inch,
}
