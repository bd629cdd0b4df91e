namespace IfcCourser.Coursing;

/// <summary>In which joints a search for pairs of rows tries all widths: each search is wider than the one before, and takes longer.</summary>
internal enum JointWidths
{
    /// <summary>In those after whole pieces that so save a cut of their own row.</summary>
    Useful,

    /// <summary>In all after whole pieces: a joint can dodge those of the other row.</summary>
    AfterWhole,

    /// <summary>In those after cut pieces too: a joint can stand where the other row leaves it a cell or two.</summary>
    All,
}
