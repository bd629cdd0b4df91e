using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A bent bar around a corner of bond beams, on the bars along them.</summary>
/// <param name="Across">Of its leg in this wall, from the wall's left face.</param>
/// <param name="OtherAcross">Of its leg in the other wall, from that wall's left face.</param>
/// <param name="Height">Of its middle, above the beam's underside.</param>
public sealed record BeamCornerBar(Length Across, Length OtherAcross, Length Height)
{
    /// <summary>In the bar schedule; empty before bars are scheduled.</summary>
    public string Mark { get; init; } = string.Empty;
}
