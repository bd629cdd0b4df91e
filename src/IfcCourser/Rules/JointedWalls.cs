namespace IfcCourser.Rules;

/// <summary>Which walls movement joints divide.</summary>
public enum JointedWalls
{
    All,

    /// <summary>Those that the model calls non-bearing.</summary>
    NonBearing,
}
