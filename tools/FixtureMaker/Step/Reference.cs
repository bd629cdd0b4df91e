namespace FixtureMaker.Step;

/// <summary>The number of an instance of the file: #12.</summary>
internal readonly record struct Reference(int Id);
