namespace IfcCourser.Layouts;

/// <summary>What a line of an order is, in the order of the lists.</summary>
public enum OrderItem
{
    /// <summary>A unit laid whole.</summary>
    FullUnit,

    /// <summary>A bought part length laid whole.</summary>
    PartUnit,

    /// <summary>A trough unit laid whole.</summary>
    TroughUnit,

    /// <summary>A unit with a core made in the works, laid whole.</summary>
    CoredUnit,

    /// <summary>A unit that is sawn.</summary>
    CutUnit,

    /// <summary>Units more, for breakage.</summary>
    UnitWaste,

    Pallet,
    Lintel,

    /// <summary>A lintel formed and cast on site.</summary>
    FormedLintel,
    JointMortar,
    LevellingMortar,

    /// <summary>Damp-proof membrane under first courses.</summary>
    Membrane,

    /// <summary>Of cores, bond beams and trough lintels.</summary>
    Grout,

    /// <summary>Of beams and lintels cast between boards.</summary>
    Concrete,

    /// <summary>Boards of what is cast on site: sides and underside.</summary>
    Form,

    /// <summary>Length to be shored under formed lintels.</summary>
    Shoring,

    /// <summary>A vertical bar of the schedule.</summary>
    Bar,

    /// <summary>A bar of the schedule along bond beams.</summary>
    BeamBar,

    /// <summary>A bent bar around a corner of bond beams.</summary>
    CornerBar,
    Coupler,
    Tie,

    /// <summary>What is cut out of an inspection notch, kept to close it.</summary>
    NotchPiece,

    /// <summary>A hole for a bar to bore through a piece on site.</summary>
    CoreHole,

    /// <summary>Built in for others.</summary>
    Embed,
}
