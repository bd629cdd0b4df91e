using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Lengths that bars are delivered in.</summary>
/// <param name="Kind">Table of sizes.</param>
/// <param name="Sizes">Only these; all of the table where none is named.</param>
/// <param name="Steel">Only of this standard and grade; null for all.</param>
/// <param name="Lengths">The shortest first.</param>
public sealed record BarStock(BarKind Kind, ImmutableArray<string> Sizes, string? Steel, ImmutableArray<Length> Lengths)
{
    public bool Fits(BarSize size, string steel) => size.Kind == Kind
        && (Sizes.IsEmpty || Sizes.Contains(size.Name, StringComparer.Ordinal))
        && (Steel is null || string.Equals(Steel, steel, StringComparison.Ordinal));
}
