namespace IfcCourser.Step21;

/// <summary>A place in a file where something is not as ISO 10303-21 asks.</summary>
/// <param name="Offset">Of the byte where the instance or statement starts.</param>
/// <param name="Id">Instance number where known.</param>
internal readonly record struct StepDefect(long Offset, long? Id, string What, string Remedy);
