namespace IfcCourser.Slabs;

/// <summary>What was read at a point, by the code column.</summary>
public enum ReadingCode
{
    /// <summary>SLAB, or left empty: the top of the slab.</summary>
    Slab,

    /// <summary>TOP: the top of a block of the first course.</summary>
    Top,

    /// <summary>BAR: the middle of a bar as built.</summary>
    Bar,

    /// <summary>CONTROL: a point whose place in the model is known.</summary>
    Control,
}
