using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>The block that a bar's foot stands in.</summary>
/// <param name="Wall">GlobalId of its wall: at a corner it may be the other wall's.</param>
/// <param name="Course">Number of its course.</param>
/// <param name="Before">From the block's end towards the wall's start to the bar.</param>
/// <param name="After">From the bar to the block's other end.</param>
public sealed record FootBlock(string Wall, int Course, Length Before, Length After);
