using System.Collections.Immutable;

namespace IfcCourser.Layouts;

/// <summary>Which units are sawn, and into what.</summary>
/// <param name="Reuse">How far offcuts may go.</param>
/// <param name="Units">By number.</param>
/// <param name="LeastUnits">Fewer can't do, as far as was proven; equal to their number where that is the least.</param>
public sealed record SawList(OffcutReuse Reuse, ImmutableArray<SawnUnit> Units, int LeastUnits)
{
    /// <summary>Pieces that are sawn; as many units would go without reuse.</summary>
    public int Pieces => Units.Sum(unit => unit.Pieces.Length);

    /// <summary>Units saved by using offcuts.</summary>
    public int Saved => Pieces - Units.Length;

    /// <summary>Units above what is proven to be needed at least.</summary>
    public int Gap => Units.Length - LeastUnits;
}
