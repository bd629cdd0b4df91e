namespace IfcCourser.Walls;

/// <summary>How two walls meet.</summary>
public enum JunctionKind
{
    Corner,
    Tee,
    Cross,
    Continued,
}
