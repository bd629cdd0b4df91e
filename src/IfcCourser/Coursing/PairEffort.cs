namespace IfcCourser.Coursing;

/// <summary>
/// How much a wall's searches for pairs of rows may still do, counted in states: the same on every machine. A broken rule is
/// worth more of it than a cut.
/// </summary>
internal sealed class PairEffort
{
    private const long ForRules = 6_000_000;

    private const long ForCuts = 200_000;

    private long _most = ForCuts;
    private long _spent;

    public bool IsSpent => _spent >= _most;

    /// <summary>Sets what the searches may do from now on, by whether the best wall known breaks a rule.</summary>
    public void Allow(bool isBroken) => _most = isBroken ? ForRules : ForCuts;

    public void Spend(int states) => _spent += states;
}
