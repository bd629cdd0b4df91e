namespace IfcCourser.Slabs;

/// <summary>Where a bar as built stands.</summary>
public enum BarPlace
{
    /// <summary>In its core, and the core keeps its distance from joints.</summary>
    Inside,

    /// <summary>Further along the wall than the core may move before it comes too near a joint.</summary>
    OffAlong,

    /// <summary>Out of the core across the wall.</summary>
    OffAcross,
}
