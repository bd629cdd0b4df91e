namespace IfcCourser.Output.Sheets;

/// <summary>Which point of a line of text stands at its place: on the base line, or half the capitals' height above it.</summary>
public enum TextAnchor
{
    Left,
    Centre,
    Right,
    MiddleLeft,
    Middle,
    MiddleRight,
}
