using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A bar cast into the slab.</summary>
/// <param name="IsHooked">Its foot is bent by 90 degrees.</param>
/// <param name="Embedment">From the slab's top to its end or the underside of the hook.</param>
/// <param name="HookLeg">Outside length of the hook; zero where there is none.</param>
/// <param name="StickUp">Above the slab.</param>
public sealed record StarterBar(bool IsHooked, Length Embedment, Length HookLeg, Length StickUp)
{
    /// <summary>Its mark in the bar schedule; empty before bars are scheduled.</summary>
    public string Mark { get; init; } = string.Empty;
}
