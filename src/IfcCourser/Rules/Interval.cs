namespace IfcCourser.Rules;

/// <summary>From least to largest, both inclusive.</summary>
public sealed record Interval<T>(T Least, T Largest);
