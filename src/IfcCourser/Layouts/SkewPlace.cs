using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A place measured from the corner of a wall's face.</summary>
/// <param name="Corner">Number of the control point at the start of the wall's left face.</param>
/// <param name="Along">Along that face.</param>
/// <param name="Across">Square to it, into the wall.</param>
public sealed record SkewPlace(int Corner, Length Along, Length Across);
