namespace IfcCourser.Output.Sheets;

/// <summary>Whether an attribute is drawn or only carried as data.</summary>
public enum AttributeDisplay
{
    Shown,
    Hidden,
}
