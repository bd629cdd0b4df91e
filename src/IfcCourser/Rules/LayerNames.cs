namespace IfcCourser.Rules;

/// <summary>Which standard the names of drawing layers follow.</summary>
public enum LayerNames
{
    /// <summary>ISO 13567: agent (2 characters), element (6), presentation (2).</summary>
    Iso13567,

    /// <summary>US National CAD Standard: discipline, then groups of four characters.</summary>
    Ncs,
}
