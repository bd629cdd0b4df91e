namespace IfcCourser.Modules;

/// <summary>Why a move was refused.</summary>
internal enum Refusal
{
    /// <summary>Openings are laid out as designed.</summary>
    Kept,

    /// <summary>It would widen the opening, and widths are kept.</summary>
    Widens,

    /// <summary>A jamb would move further than the largest shift.</summary>
    PastLargestShift,

    /// <summary>A pier would be left under the least pier.</summary>
    PierShort,

    /// <summary>Other openings, which move together with it or beside it, stand better without it.</summary>
    Others,
}
