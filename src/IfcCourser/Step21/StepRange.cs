namespace IfcCourser.Step21;

/// <summary>A stretch of a file's bytes.</summary>
public readonly record struct StepRange(long Start, long End);
