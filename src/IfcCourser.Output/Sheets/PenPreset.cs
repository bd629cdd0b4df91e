namespace IfcCourser.Output.Sheets;

/// <summary>Which standard the layer names follow.</summary>
public enum PenPreset
{
    /// <summary>ISO 13567: agent (2 characters), element (6), presentation (2).</summary>
    Iso13567,

    /// <summary>US National CAD Standard: discipline, then groups of four characters.</summary>
    Ncs,
}
