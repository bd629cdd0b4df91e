namespace IfcCourser.Layouts;

/// <summary>What the end of a span stands against.</summary>
public enum EdgeKind
{
    Free,
    Jamb,

    /// <summary>Another wall's face, a head joint away.</summary>
    Wall,

    /// <summary>A lintel's end, a head joint away.</summary>
    Lintel,

    /// <summary>A movement joint.</summary>
    Movement,
}
