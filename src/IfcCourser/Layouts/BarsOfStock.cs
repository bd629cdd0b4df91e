using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Bars of one size and steel, and the stock lengths that they are cut from.</summary>
/// <param name="Stock">The one length that takes the least steel; zero where no stock length is known or long enough.</param>
/// <param name="Cuts">Alike ones together, the fullest first.</param>
/// <param name="Least">Fewer bars of that length can't do, as far as was proven.</param>
/// <param name="TooLong">Marks of bars longer than any stock.</param>
public sealed record BarsOfStock(BarSize Size, string Steel, Length Stock, ImmutableArray<BarCut> Cuts, int Least, ImmutableArray<string> TooLong)
{
    /// <summary>Bars to be delivered.</summary>
    public int Count => Cuts.Sum(cut => cut.Count);

    /// <summary>Bars above what is proven to be needed at least.</summary>
    public int Gap => Count - Least;

    /// <summary>What all offcuts come to.</summary>
    public Length Offcuts => Cuts.Aggregate(Length.Zero, (sum, cut) => sum + (cut.Offcut * cut.Count));
}
