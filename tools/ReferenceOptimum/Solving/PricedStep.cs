namespace ReferenceOptimum.Solving;

/// <summary>A piece laid, and the joint behind it.</summary>
/// <param name="Row">0 in the lower course, 1 in the upper one.</param>
/// <param name="Breaches">Rules broken whatever lies in the other course.</param>
/// <param name="IsCut">To length or by a slope.</param>
internal readonly record struct PricedStep(int Row, int Breaches, bool IsCut)
{
    /// <summary>The joint's doubled centre in cells; null where a stretch ends.</summary>
    public int? Centre { get; init; }

    /// <summary>Whether the joint laps too short with the last of the other course.</summary>
    public bool IsLapShort { get; init; }
}
