using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Equal bars of a wall in the bar schedule.</summary>
/// <param name="Mark">The same for equal bars of all walls.</param>
/// <param name="Wall">GlobalId.</param>
/// <param name="Size">Of the tables.</param>
/// <param name="Steel">Standard and grade.</param>
/// <param name="Number">How many.</param>
/// <param name="Shape">00 and 11 of BS 8666; in the inch form straight or a type of ACI 315: 2 with a hook of 90 degrees, 17 around a corner.</param>
/// <param name="A">Longer leg, to its outside; the length of a straight bar.</param>
/// <param name="B">Hook or other leg, to its outside; zero of a straight bar.</param>
/// <param name="Radius">Of the bend, inside; zero of a straight bar.</param>
/// <param name="Length">Of the bar as cut.</param>
public sealed record BarScheduleRow(
    string Mark, string Wall, BarSize Size, string Steel, int Number, string Shape, Length A, Length B, Length Radius, Length Length)
{
    public BarUse Use { get; init; }

    /// <summary>Of all, kg.</summary>
    public double Mass => Number * Size.Mass(Length);
}
