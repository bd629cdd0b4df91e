namespace IfcCourser.Rules;

/// <summary>What may be done to openings that are off the module (--openings).</summary>
public enum OpeningPolicy
{
    /// <summary>Lay out as designed.</summary>
    Keep,

    /// <summary>Shift to module lines, width kept.</summary>
    Move,

    /// <summary>Jambs snap one by one; never smaller.</summary>
    Resize,
}
