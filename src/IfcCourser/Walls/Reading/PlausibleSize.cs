using IfcCourser.Findings;

namespace IfcCourser.Walls.Reading;

/// <summary>Tells bodies whose size no wall has: as a rule the model's length unit is wrong, or was not applied. Common practice, no source.</summary>
public static class PlausibleSize
{
    private const double Longest = 10_000_000;

    private const double Highest = 100_000;

    private const double Thickest = 5_000;

    /// <summary>A wall of which no side is this long is the model of one.</summary>
    private const double Least = 100;

    /// <summary>Why a body can't be a wall by its size; null where it can.</summary>
    /// <param name="body">Its box, mm.</param>
    /// <param name="thickness">Between its faces, mm; null where it has no two faces.</param>
    public static Finding? Fault(BodyFacts body, double? thickness)
    {
        var size = body.Max - body.Min;
        var longest = Math.Max(size.X, size.Y);
        return longest > Longest || size.Z > Highest || thickness > Thickest || Math.Max(longest, size.Z) < Least
            ? WallFindings.SizeImplausible(longest, thickness, size.Z)
            : null;
    }
}
