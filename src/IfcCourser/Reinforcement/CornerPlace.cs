using IfcCourser.Walls;

namespace IfcCourser.Reinforcement;

/// <summary>A corner of a wall: the index of its junction and its place on the wall's run.</summary>
internal readonly record struct CornerPlace(int Junction, JunctionPlace Place);
