namespace IfcCourser.Reinforcement;

/// <summary>How good a wall's bars are, the first difference counts.</summary>
/// <param name="Unmet">Demands without a bar.</param>
/// <param name="Gaps">Heights at which neighbouring bars stand further apart than allowed.</param>
/// <param name="OnJoint">Courses that a bar passes too near a joint.</param>
/// <param name="Bars">How many there are.</param>
/// <param name="OffLine">Bars that stand over none of the wall below.</param>
internal readonly record struct BarCost(int Unmet, int Gaps, int OnJoint, int Bars, int OffLine) : IComparable<BarCost>
{
    public static BarCost operator +(BarCost a, BarCost b) =>
        new(a.Unmet + b.Unmet, a.Gaps + b.Gaps, a.OnJoint + b.OnJoint, a.Bars + b.Bars, a.OffLine + b.OffLine);

    public int CompareTo(BarCost other) =>
        (Unmet, Gaps, OnJoint, Bars, OffLine).CompareTo((other.Unmet, other.Gaps, other.OnJoint, other.Bars, other.OffLine));
}
