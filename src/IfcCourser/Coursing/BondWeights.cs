namespace IfcCourser.Coursing;

/// <summary>
/// What the solver weighs against what, in the order of the layout man's aims: each weight is larger than all
/// weights below it can sum up to on a course.
/// </summary>
internal static class BondWeights
{
    /// <summary>A broken hard rule: a lap too short, a piece under the least, a core too near a joint.</summary>
    public const long Breach = 1_000_000_000_000;

    /// <summary>Less than a full unit, or bearing and least piece, under a lintel's bearing.</summary>
    public const long Bearing = 20_000_000_000;

    /// <summary>A piece that has to be cut.</summary>
    public const long Cut = 100_000_000;

    /// <summary>A cut piece at a jamb or under a bearing.</summary>
    public const long CutAtJamb = 2_000_000;

    /// <summary>A piece shorter than preferred.</summary>
    public const long Short = 500_000;

    /// <summary>A cut piece at a wall's end or corner: the closer belongs mid-run.</summary>
    public const long CutAtEnd = 60_000;

    /// <summary>A joint that does not stand over the one two courses below.</summary>
    public const long NotRepeated = 2_000;

    /// <summary>A joint that laps less than preferred.</summary>
    public const long LapUnderPreferred = 500;

    /// <summary>A step of the cut grid by which a head joint differs from its nominal width.</summary>
    public const long JointStep = 10;
}
