namespace IfcCourser.Output.Page;

/// <summary>What the designer is asked about an opening; the gravest last.</summary>
internal enum OpeningState
{
    /// <summary>Recesses and drilled holes.</summary>
    NotCoursed,

    OnModule,

    /// <summary>Moved onto lines: the designer's consent is awaited.</summary>
    Moved,

    /// <summary>A jamb stands off the lines, and no move that is allowed cures it.</summary>
    Off,
}
