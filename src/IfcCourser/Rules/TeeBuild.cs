namespace IfcCourser.Rules;

/// <summary>How abutting walls are joined at tees.</summary>
public enum TeeBuild
{
    /// <summary>Built against the main wall, with ties in its beds; the main wall's courses are unchanged.</summary>
    Tied,

    /// <summary>Units of the abutting wall run through the main wall in every second course.</summary>
    Bonded,
}
