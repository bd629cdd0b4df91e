using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A vertical joint over the wall's height that lets panels move.</summary>
public sealed record MovementJoint(Length At, Length Width, Length Bottom, Length Top, string Why);
