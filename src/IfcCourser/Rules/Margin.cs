using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>A strip around an opening: on each side, over the head and under the sill.</summary>
public readonly record struct Margin(Length Side, Length Head, Length Sill)
{
    public static Margin operator +(Margin a, Margin b) => new(a.Side + b.Side, a.Head + b.Head, a.Sill + b.Sill);
}
