using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>The levelling bed under a block of the first course by the readings of its slab.</summary>
public sealed record PieceBed(Length Least, Length Most, Length Mean);
