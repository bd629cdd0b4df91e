using System.Collections.Immutable;

namespace IfcCourser.Rules;

/// <summary>Limits by the distance of two places.</summary>
/// <param name="Rows">The nearest distance first; at least one.</param>
public sealed record ToleranceTable(ImmutableArray<ToleranceRow> Rows)
{
    /// <summary>The row of the least distance that reaches from one place to the other; null where none does.</summary>
    /// <param name="apart">mm.</param>
    public ToleranceRow? RowOf(double apart) => Rows.Where(row => apart <= row.Within.Mm).Select(row => (ToleranceRow?)row).FirstOrDefault();

    /// <summary>The limit in mm, between the table's distances in proportion (DIN 18202:2013, 5.4, from memory); nearer than the first and beyond the last row that row's.</summary>
    /// <param name="apart">mm.</param>
    public double InProportion(double apart)
    {
        for (var i = 1; i < Rows.Length; i++)
        {
            if (apart <= Rows[i].Within.Mm)
            {
                var (from, to) = (Rows[i - 1], Rows[i]);
                return from.Limit.Mm + ((to.Limit - from.Limit).Mm * Math.Max(0, apart - from.Within.Mm) / (to.Within - from.Within).Mm);
            }
        }

        return Rows[^1].Limit.Mm;
    }
}
