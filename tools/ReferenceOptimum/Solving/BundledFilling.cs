namespace ReferenceOptimum.Solving;

/// <summary>A filling met on the way to better prices: at no prices does its pair cost more.</summary>
/// <param name="Number">In the order in which fillings were met.</param>
/// <param name="Pair">Number of its pair, from 0.</param>
/// <param name="Filling">What is laid.</param>
/// <param name="Breaches">Its own, less the pair's part of those that the bond may have.</param>
internal sealed record BundledFilling(int Number, int Pair, PricedFilling Filling, double Breaches)
{
    /// <summary>Its part in the way that prices go; those of a pair's fillings are 1 together.</summary>
    public double Weight { get; set; }

    /// <summary>What it costs at the best prices known.</summary>
    public double Cost { get; set; }

    /// <summary>What it costs more where prices go the way of the weighted fillings.</summary>
    public double Slope { get; set; }

    /// <summary>By number of a filling, what it costs more where prices go the way of that one.</summary>
    public List<double> Products { get; } = [];
}
