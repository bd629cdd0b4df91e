namespace IfcCourser.Layouts;

/// <summary>A core of the wall below.</summary>
/// <param name="Wall">GlobalId.</param>
/// <param name="Core">Its id in that wall.</param>
public sealed record CoreBelow(string Wall, string Core);
