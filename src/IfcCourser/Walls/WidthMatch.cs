namespace IfcCourser.Walls;

/// <summary>What to do where no catalog width equals the masonry layer's thickness.</summary>
public enum WidthMatch
{
    /// <summary>The wall is skipped.</summary>
    Exact,

    /// <summary>The nearest width is taken, with a finding.</summary>
    Nearest,

    /// <summary>The wall is laid out in its own thickness.</summary>
    Any,
}
