namespace IfcCourser.Slabs;

/// <summary>Where a bar as built stands.</summary>
public enum BarPlace
{
    /// <summary>In its core as planned, or near enough that the core goes with it and still keeps its distance from joints.</summary>
    Inside,

    /// <summary>Out of the core as planned, and further along the wall than the core may move before it comes too near a joint.</summary>
    OffAlong,

    /// <summary>Out of the core across the wall, or across the other wall of a corner.</summary>
    OffAcross,
}
