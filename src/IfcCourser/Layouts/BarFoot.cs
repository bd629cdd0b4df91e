namespace IfcCourser.Layouts;

/// <summary>What a bar begins in.</summary>
public enum BarFoot
{
    /// <summary>A starter cast into the slab under the wall.</summary>
    Slab,

    /// <summary>The bar of the wall below, which runs on through the slab.</summary>
    BarBelow,

    /// <summary>A lintel or beam in the wall.</summary>
    Head,
}
