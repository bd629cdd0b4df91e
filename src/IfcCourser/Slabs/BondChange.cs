using System.Collections.Immutable;
using IfcCourser.Layouts;

namespace IfcCourser.Slabs;

/// <summary>A wall whose blocks are laid otherwise, around bars as built.</summary>
/// <param name="Before">As planned.</param>
/// <param name="After">As its bars stand.</param>
/// <param name="Bars">Ids of the cores that this clears, in the order of the wall.</param>
public sealed record BondChange(WallLayout Before, WallLayout After, ImmutableArray<string> Bars);
