using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>A unit with a hollow along its length, open upwards, for a bond beam's bars and grout: as long and as high as the catalog's unit.</summary>
/// <param name="Name">Product name in the tables.</param>
/// <param name="Widths">Wall widths it is made for, actual or nominal; empty where it is made for all.</param>
/// <param name="Shell">Thickness of each side.</param>
/// <param name="Bottom">Thickness under the hollow.</param>
public sealed record TroughUnit(string Name, ImmutableArray<Length> Widths, Length Shell, Length Bottom)
{
    /// <summary>Area of the hollow's cross-section in a wall, m2.</summary>
    public double HollowArea(Length thickness, Length unitHeight) => (thickness - (Shell * 2)).Mm * (unitHeight - Bottom).Mm / 1e6;
}
