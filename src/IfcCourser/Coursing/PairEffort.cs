namespace IfcCourser.Coursing;

/// <summary>How much a wall's searches for pairs of rows may still do, counted in states: the same on every machine.</summary>
internal sealed class PairEffort
{
    private long _left = 200_000;

    public bool IsSpent => _left <= 0;

    public void Spend(int states) => _left -= states;
}
