namespace IfcCourser.Rules;

/// <summary>Which tops of walls end with a bond beam.</summary>
public enum BeamedTops
{
    None,

    /// <summary>Level tops: under floors, at eaves and roofs.</summary>
    Level,

    /// <summary>Sloping tops as well, with a beam formed along the slope.</summary>
    Raked,
}
