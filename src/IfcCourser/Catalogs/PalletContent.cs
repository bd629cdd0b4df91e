using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>How many units stand on a pallet.</summary>
/// <param name="Product">As pieces name it: unit, part unit, cored unit, or a trough unit's name; null for all products as long as the unit.</param>
/// <param name="Width">Actual or nominal.</param>
/// <param name="Height">Null for the unit's height.</param>
public sealed record PalletContent(string? Product, Length Width, Length? Height, int Units);
