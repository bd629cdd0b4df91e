using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>How one bar goes on in the next: lapped by so many diameters, by a table or by a length; or with couplers.</summary>
/// <param name="Diameters">Lap in diameters of the bar; zero where a table or a length says it.</param>
/// <param name="Table">Laps by size.</param>
/// <param name="Least">Least lap; the lap itself where neither diameters nor table say it.</param>
/// <param name="Coupler">Length of a coupler; null where bars lap.</param>
public sealed record BarSplice(int Diameters, ImmutableArray<(BarSize Bar, Length Lap)> Table, Length Least, Length? Coupler)
{
    /// <summary>Lap of two bars of a size; zero where couplers join them.</summary>
    public Length Lap(BarSize bar) => Coupler is not null
        ? Length.Zero
        : Length.Max(Least, Length.Max(bar.Diameter * Diameters, Table.Where(row => row.Bar == bar).Select(row => row.Lap).FirstOrDefault()));
}
