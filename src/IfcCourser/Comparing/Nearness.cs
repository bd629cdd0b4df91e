using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Comparing;

/// <summary>What counts as the same place: programs round coordinates anew with each export.</summary>
internal static class Nearness
{
    private const double Mm = 0.1;

    public static bool Is(Vector3 a, Vector3 b) => (a - b).Length <= Mm;

    public static bool Is(Vector2 a, Vector2 b) => (a - b).Length <= Mm;

    public static bool Is(Length a, Length b) => Length.Abs(a - b) <= Length.FromMm(Mm);

    public static bool Is(ElevationRect a, ElevationRect b) => Is(a.Left, b.Left) && Is(a.Right, b.Right) && Is(a.Bottom, b.Bottom) && Is(a.Top, b.Top);

    /// <summary>Whether two walls lie along each other: their ends may not part by more than rounding.</summary>
    public static bool IsDirection(Vector2 a, Vector2 b, Length over) => Is(a * over.Mm, b * over.Mm);
}
