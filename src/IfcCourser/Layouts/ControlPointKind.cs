namespace IfcCourser.Layouts;

/// <summary>What stands at a control point.</summary>
public enum ControlPointKind
{
    /// <summary>Corner of the outer faces of walls.</summary>
    WallCorner,

    /// <summary>Corner from which a wall askew to the axes is measured.</summary>
    SkewCorner,

    SlabCorner,

    /// <summary>Where two grid lines cross.</summary>
    GridCrossing,
}
