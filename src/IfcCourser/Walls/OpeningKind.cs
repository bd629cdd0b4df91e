namespace IfcCourser.Walls;

/// <summary>What an opening is to the mason.</summary>
public enum OpeningKind
{
    Door,
    Window,

    /// <summary>Goes through the masonry, filled by neither door nor window.</summary>
    Void,

    /// <summary>Does not go through the masonry; the coursing passes behind it.</summary>
    Recess,

    /// <summary>Small enough to be drilled or sawn after laying.</summary>
    Drilled,
}
