namespace IfcCourser.Output.Sheets;

/// <summary>Line types after ISO 128-2 (continuous, dashed, long-dashed dotted).</summary>
public enum LineType
{
    Continuous,
    Dashed,

    /// <summary>Long dash and dot: axes.</summary>
    Centre,

    /// <summary>Long dash, short gap: the level line.</summary>
    LongDash,
}
