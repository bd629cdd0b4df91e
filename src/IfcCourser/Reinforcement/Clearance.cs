using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>How a bar stands to the courses that it passes.</summary>
/// <param name="OnJoint">Courses that it passes too near a joint.</param>
/// <param name="Distance">Its least distance from a joint, up to what is enough.</param>
/// <param name="IsInPiece">Whether any of the courses has a piece around it: a bar in joints alone has no core.</param>
internal readonly record struct Clearance(int OnJoint, Length Distance, bool IsInPiece);
