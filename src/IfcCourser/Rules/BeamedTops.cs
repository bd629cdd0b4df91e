namespace IfcCourser.Rules;

/// <summary>Which tops of walls end with a bond beam.</summary>
public enum BeamedTops
{
    None,

    /// <summary>Level tops: under floors, at eaves and roofs; a sloping one is named in a finding.</summary>
    Level,

    /// <summary>Sloping tops as well, with a beam formed along the slope.</summary>
    Raked,
}
