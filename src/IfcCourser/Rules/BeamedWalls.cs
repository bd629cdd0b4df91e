namespace IfcCourser.Rules;

/// <summary>Which walls have bond beams.</summary>
public enum BeamedWalls
{
    All,

    /// <summary>All but those that the model calls non-bearing.</summary>
    Bearing,
}
