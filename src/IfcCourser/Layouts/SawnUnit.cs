using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A unit taken from the pallet to be sawn.</summary>
/// <param name="Number">From 1 in the order in which units are taken.</param>
/// <param name="Product">As pieces name it.</param>
/// <param name="Width">Thickness of the wall.</param>
/// <param name="Pieces">In the order in which they are laid; the first is what the unit was taken for, the others come from its offcut.</param>
public sealed record SawnUnit(int Number, string Product, Length Width, Length Length, Length Height, ImmutableArray<SawnPiece> Pieces);
