namespace ReferenceOptimum.Solving;

/// <summary>Which bonds a model holds.</summary>
internal enum Breadth
{
    /// <summary>All that can be best: bounds follow.</summary>
    All,

    /// <summary>Those with few pieces more than the stretches need.</summary>
    FewPieces,

    /// <summary>Of these, those in which every second course repeats where its surroundings do.</summary>
    Repeating,
}
