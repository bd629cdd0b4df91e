using System.Collections.Immutable;

namespace IfcCourser.Step21;

/// <summary>A part of a complex instance.</summary>
/// <param name="Type">Upper-case entity name.</param>
public sealed record StepPart(string Type, ImmutableArray<StepValue> Arguments);
