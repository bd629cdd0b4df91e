namespace IfcCourser.Layouts;

/// <summary>What a line of a set-out is.</summary>
public enum ControlLineKind
{
    GridLine,
    SlabEdge,
    WallFace,
}
