namespace ReferenceOptimum.Bars;

/// <summary>A bar that a rule asks for: twice the ends of the range it may stand in, and the height that asks.</summary>
internal readonly record struct BarNeed(long From2, long To2, long Bottom, long Top);
