using IfcCourser.Walls;

namespace IfcCourser.Reinforcement;

/// <summary>A corner of a wall.</summary>
/// <param name="Junction">Index of its junction.</param>
/// <param name="Place">Where it lies on the wall's run.</param>
/// <param name="HasBar">Whether a bar stands where the walls cross; the blocks of a wall too thin for cores hold none, so that the wall ends there as at a wall that it abuts.</param>
internal readonly record struct CornerPlace(int Junction, JunctionPlace Place, bool HasBar = true);
