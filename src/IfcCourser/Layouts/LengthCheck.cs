using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>How a wall's length stands to the lengths that whole modules make.</summary>
/// <param name="Length">Of the run.</param>
/// <param name="Under">The longest on the module that is no longer.</param>
/// <param name="Over">The shortest on the module that is no shorter; the same where the length is on the module.</param>
/// <param name="IsTaken">Whether head joints within their limits take what is missing or too much to the nearer of the two.</param>
public sealed record LengthCheck(Length Length, Length Under, Length Over, bool IsTaken)
{
    /// <summary>What the nearer of the two lengths has more; negative where it is the shorter.</summary>
    public Length Way => Over - Length <= Length - Under ? Over - Length : Under - Length;
}
