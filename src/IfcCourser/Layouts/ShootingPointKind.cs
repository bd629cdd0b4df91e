namespace IfcCourser.Layouts;

/// <summary>What stands at a place where the slab is read.</summary>
public enum ShootingPointKind
{
    Corner,

    /// <summary>End of a wall.</summary>
    End,

    Jamb,

    /// <summary>Where another wall meets this one.</summary>
    Tee,

    /// <summary>Between the others, so that none is further than 8 ft (2.5 m) from the next.</summary>
    Between,
}
