using IfcCourser.Units;

namespace IfcCourser.Panels;

/// <summary>
/// How good a choice of movement joints is, the first member counts most: places asked for that have none, by how much panels
/// are too long together, the number of joints, their faces off module lines, and the sum of the squares of the panels' lengths,
/// least where they are even. Scores of parts of a run add up.
/// </summary>
internal readonly record struct PanelScore(int Missed, Length Excess, int Joints, int OffLines, Int128 Squares) : IComparable<PanelScore>
{
    public static PanelScore operator +(PanelScore a, PanelScore b) =>
        new(a.Missed + b.Missed, a.Excess + b.Excess, a.Joints + b.Joints, a.OffLines + b.OffLines, a.Squares + b.Squares);

    public int CompareTo(PanelScore other) =>
        (Missed, Excess, Joints, OffLines, Squares).CompareTo((other.Missed, other.Excess, other.Joints, other.OffLines, other.Squares));
}
