namespace IfcCourser.Slabs;

/// <summary>What is done about a bar as built.</summary>
public enum BarAnswer
{
    /// <summary>It stands in its core where that was planned.</summary>
    AsPlanned,

    /// <summary>Its core is drilled around it; the blocks stay as they are.</summary>
    CoreMoves,

    /// <summary>The wall's blocks are laid otherwise, so that its core keeps clear of every joint.</summary>
    BondMoves,

    /// <summary>No bond takes it: the engineer and the building official decide.</summary>
    Left,
}
