namespace ReferenceOptimum.Solving;

/// <summary>Some neighbouring courses and the least they need.</summary>
internal readonly record struct Window(int First, int Last, int Least);
