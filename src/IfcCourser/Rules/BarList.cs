using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>How bars are listed, and in which lengths they are delivered.</summary>
/// <param name="Form">Null where the catalog's units decide.</param>
/// <param name="Stock">The first entry that a bar fits counts.</param>
public sealed record BarList(BarListForm? Form, ImmutableArray<BarStock> Stock)
{
    public static readonly BarList Plain = new(null, []);

    /// <summary>Lengths that a bar is delivered in, the shortest first; empty where they are not known.</summary>
    /// <param name="steel">Standard and grade.</param>
    public ImmutableArray<Length> StockOf(BarSize size, string steel) => Stock.FirstOrDefault(stock => stock.Fits(size, steel))?.Lengths ?? [];
}
