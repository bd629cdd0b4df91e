namespace IfcCourser.Layouts;

/// <summary>How two walls are joined.</summary>
public enum JunctionHow
{
    /// <summary>Courses run through in turn.</summary>
    Bonded,

    /// <summary>Built against each other with flat ties.</summary>
    Tied,

    /// <summary>Built against each other.</summary>
    Butted,
}
