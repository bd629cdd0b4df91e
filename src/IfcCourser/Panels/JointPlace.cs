using IfcCourser.Units;

namespace IfcCourser.Panels;

/// <summary>A place that asks for a movement joint, by its centre, whatever the panels' lengths.</summary>
/// <param name="At">Its centre.</param>
/// <param name="Why">given, height or thickness.</param>
internal readonly record struct JointPlace(Length At, string Why);
