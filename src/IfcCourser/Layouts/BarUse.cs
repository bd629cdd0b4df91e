namespace IfcCourser.Layouts;

/// <summary>Where a bar of the schedule goes.</summary>
public enum BarUse
{
    /// <summary>In a core: starters and what is set after the blocks.</summary>
    Vertical,

    /// <summary>Along a bond beam.</summary>
    Beam,

    /// <summary>Around a corner of bond beams.</summary>
    Corner,
}
