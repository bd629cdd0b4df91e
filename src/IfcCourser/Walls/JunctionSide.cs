namespace IfcCourser.Walls;

/// <summary>Which part of a run a junction takes.</summary>
public enum JunctionSide
{
    Start,
    Along,
    End,
}
