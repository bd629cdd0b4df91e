namespace IfcCourser.Layouts;

/// <summary>What a bond beam is made of.</summary>
public enum BondBeamKind
{
    /// <summary>A course of trough units; trough lintels count with it.</summary>
    Trough,

    /// <summary>Concrete cast between boards in place of a course.</summary>
    Formed,

    /// <summary>Concrete cast along a slope, over the pieces cut to it.</summary>
    Raked,
}
