using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>A bar as measured beside its plan.</summary>
/// <param name="Along">Off its place along the wall, mm: positive towards the end.</param>
/// <param name="Across">Off its place across the wall, mm: positive towards the right face.</param>
/// <param name="Where">What that means for the wall as planned.</param>
/// <param name="Answer">What is done about it.</param>
public sealed record BarAsBuilt(PlacedBar Bar, WallLayout Wall, Core Core, double Along, double Across, BarPlace Where, BarAnswer Answer)
{
    /// <summary>Where it stands along its wall.</summary>
    public Length At => Core.At + Length.FromMm(Along);
}
