using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>
/// How good a placement of openings is, lower is better: jambs off their lines by more than the tolerance, jambs not
/// exactly on a line (the tolerance is the mason's, not to be spent here), then the sum of the jambs' movements.
/// </summary>
internal readonly record struct MoveScore(int OffLines, int NotExact, Length Movement) : IComparable<MoveScore>
{
    public static MoveScore operator +(MoveScore a, MoveScore b) =>
        new(a.OffLines + b.OffLines, a.NotExact + b.NotExact, a.Movement + b.Movement);

    public int CompareTo(MoveScore other) =>
        (OffLines, NotExact, Movement).CompareTo((other.OffLines, other.NotExact, other.Movement));
}
