namespace IfcCourser.Output.Sheets;

/// <summary>The dash patterns of the line types.</summary>
public static class LineTypes
{
    /// <summary>Dashes (positive), gaps (negative) and dots (zero) in paper millimetres; empty where continuous.</summary>
    public static ImmutableArray<double> Pattern(LineType type) => type switch
    {
        LineType.Dashed => [2.5, -1.25],
        LineType.Centre => [9, -1.2, 0, -1.2],
        LineType.LongDash => [6, -1.5],
        _ => [],
    };
}
