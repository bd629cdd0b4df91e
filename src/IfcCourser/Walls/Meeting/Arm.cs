using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>One of the two walls of an encounter.</summary>
/// <param name="Wall">Index of the draft.</param>
/// <param name="Side">Which part of its run meets the other.</param>
/// <param name="Stretch">Where on its run the other wall's masonry crosses its masonry, mm.</param>
public sealed record Arm(int Wall, JunctionSide Side, Slab Stretch);
