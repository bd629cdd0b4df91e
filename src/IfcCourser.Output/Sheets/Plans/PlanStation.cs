namespace IfcCourser.Output.Sheets.Plans;

/// <summary>A point that a tier of running dimensions measures.</summary>
/// <param name="At">The point, real millimetres.</param>
/// <param name="Numbers">Of the bars that stand there.</param>
/// <param name="Word">What else it is, such as slab or the tag of a grid line; may be empty.</param>
internal sealed record PlanStation(Point At, ImmutableArray<int> Numbers, string Word);
