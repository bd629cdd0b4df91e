using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>What is cast into the slab for a bar to go on from.</summary>
/// <param name="IsHooked">Bent at its foot by 90 degrees.</param>
/// <param name="Embedment">From the slab's top down to the bar's end or the underside of its hook.</param>
/// <param name="HookExtension">Straight part behind the bend, in diameters.</param>
/// <param name="CouplerStickUp">Above the slab where a coupler joins the next bar; lapped bars stick up by their lap.</param>
public sealed record BarStarter(bool IsHooked, Length Embedment, int HookExtension, Length CouplerStickUp);
