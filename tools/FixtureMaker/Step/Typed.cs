namespace FixtureMaker.Step;

/// <summary>A value that names its type: IFCLABEL('x').</summary>
internal sealed record Typed(string Type, object Value);
