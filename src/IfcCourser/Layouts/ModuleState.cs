namespace IfcCourser.Layouts;

/// <summary>How an opening's jambs, as they are wanted, stand to the module lines of its wall.</summary>
public enum ModuleState
{
    /// <summary>Both jambs stand on lines within the tolerance.</summary>
    OnModule,

    /// <summary>Off as wanted; this layout has moved it, or one jamb of it, onto lines.</summary>
    Cured,

    /// <summary>Off, and openings are kept; a shift within the limits would put both jambs on lines.</summary>
    Curable,

    /// <summary>Off, and no shift alone cures it: its width is no whole number of modules.</summary>
    WidthOff,

    /// <summary>Off; its width is on the module, but the shift that would cure it is not allowed.</summary>
    Stuck,

    /// <summary>A gap of the wall's own body, which nobody may move.</summary>
    Fixed,

    /// <summary>Courses do not stop at it.</summary>
    NotCoursed,
}
