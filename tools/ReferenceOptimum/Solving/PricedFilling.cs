namespace ReferenceOptimum.Solving;

/// <summary>The cheapest filling of two neighbouring courses.</summary>
/// <param name="Least">What it costs; infinite where there is none.</param>
/// <param name="Laps">Laps between them that are too short.</param>
internal sealed record PricedFilling(double Least, PricedCourse Lower, PricedCourse Upper, int Laps);
