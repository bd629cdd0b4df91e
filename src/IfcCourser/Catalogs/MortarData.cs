using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>What mortar is ordered by.</summary>
/// <param name="KilogramsPerLitre">Dry powder in a litre of mortar; null where it is not known.</param>
/// <param name="Bag">Mass of a bag, kg; null where it is not known.</param>
/// <param name="LossPercent">Left on tools, in tubs and beside the joint.</param>
/// <param name="Spread">Thickness it is combed on at where joints are thinner; null where joints count as they are.</param>
/// <param name="Bedded">Width of mortar across the wall, of hollow units both shells together; null for the whole thickness.</param>
public sealed record MortarData(double? KilogramsPerLitre, double? Bag, int LossPercent, Length? Spread, Length? Bedded)
{
    /// <summary>Litres of mortar from a bag; null where that is not known.</summary>
    public double? LitresPerBag => Bag / KilogramsPerLitre;
}
