using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A bar along a bond beam; where bars lap, every second one lies on the others.</summary>
/// <param name="Bar">From 1 at the left face.</param>
/// <param name="From">Start along the wall's run.</param>
/// <param name="To">End along the wall's run.</param>
/// <param name="Size">Its length, along the slope of a raked beam.</param>
/// <param name="Across">Of its middle, from the wall's left face.</param>
/// <param name="Height">Of its middle, upright above the beam's underside.</param>
public sealed record BeamBar(int Bar, Length From, Length To, Length Size, Length Across, Length Height)
{
    /// <summary>In the bar schedule; empty before bars are scheduled.</summary>
    public string Mark { get; init; } = string.Empty;
}
