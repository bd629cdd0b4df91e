namespace IfcCourser.Output.Page;

/// <summary>The walls of a storey that are laid out.</summary>
/// <param name="Number">From 1, the lowest first.</param>
internal sealed record PageStorey(int Number, string Name, ImmutableArray<PageWall> Walls);
