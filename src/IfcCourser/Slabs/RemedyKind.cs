namespace IfcCourser.Slabs;

/// <summary>What can be done where a slab is out of level by more than the bed takes.</summary>
public enum RemedyKind
{
    /// <summary>The course stands at the lowest level with the least bed everywhere; the bed takes the rest.</summary>
    RaiseDatum,

    /// <summary>Undersides of blocks over highs are trimmed.</summary>
    Trim,

    /// <summary>Lows are filled before the bed is laid.</summary>
    Fill,

    /// <summary>Highs are ground off.</summary>
    Grind,

    /// <summary>Undersides are trimmed over highs and lows are filled, at the level where that costs least.</summary>
    TrimAndFill,

    /// <summary>Highs are ground off and lows are filled, at the level where that costs least.</summary>
    GrindAndFill,

    /// <summary>Units of other heights where the bed would be too thin or too thick.</summary>
    OtherUnits,
}
