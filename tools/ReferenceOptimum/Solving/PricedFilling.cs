namespace ReferenceOptimum.Solving;

/// <summary>The cheapest filling of two neighbouring courses.</summary>
/// <param name="Least">What it costs; infinite where there is none.</param>
/// <param name="Laps">Laps between them that are too short.</param>
internal sealed record PricedFilling(double Least, PricedCourse Lower, PricedCourse Upper, int Laps)
{
    /// <summary>Rules broken; of those that a course breaks by itself each pair that it is in bears the same part.</summary>
    /// <param name="ofLower">The pair's part for the lower course.</param>
    /// <param name="ofUpper">The same for the upper one.</param>
    public double Breaches(double ofLower, double ofUpper) => Laps + (Lower.Breaches * ofLower) + (Upper.Breaches * ofUpper);
}
