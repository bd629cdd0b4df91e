namespace IfcCourser.Output.Sheets;

/// <summary>Whether a path returns to its first point.</summary>
public enum PathEnd
{
    Open,
    Closed,
}
