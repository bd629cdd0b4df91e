using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>A lintel of the catalog's example list; to be confirmed by an engineer.</summary>
/// <param name="Name">Product name in the tables.</param>
/// <param name="Kind">Solid or trough.</param>
/// <param name="MaxClearSpan">Largest clear opening width.</param>
/// <param name="Height">Height in whole courses (course heights with the bed joints between them).</param>
public sealed record LintelProduct(string Name, LintelKind Kind, Length MaxClearSpan, int Height);
