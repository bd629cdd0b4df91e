using IfcCourser.Layouts;

namespace IfcCourser.Slabs;

/// <summary>A bar as measured beside its plan.</summary>
/// <param name="Along">Off its place along the wall, mm: positive towards the end.</param>
/// <param name="Across">Off its place across the wall, mm: positive towards the right face.</param>
/// <param name="Where">What that means.</param>
public sealed record BarAsBuilt(PlacedBar Bar, WallLayout Wall, Core Core, double Along, double Across, BarPlace Where);
