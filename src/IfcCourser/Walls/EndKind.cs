namespace IfcCourser.Walls;

/// <summary>What a wall's end meets.</summary>
public enum EndKind
{
    Free,

    /// <summary>Two walls share a corner; the run reaches the other wall's outer face.</summary>
    Corner,

    /// <summary>The run ends at the near face of the wall it meets.</summary>
    Tee,

    /// <summary>Ends at a crossing.</summary>
    Cross,

    /// <summary>Another wall goes on in the same line.</summary>
    Continued,

    MovementJoint,
}
