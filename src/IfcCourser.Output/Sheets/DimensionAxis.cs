namespace IfcCourser.Output.Sheets;

/// <summary>Along which axis a dimension measures.</summary>
public enum DimensionAxis
{
    Horizontal,
    Vertical,
}
