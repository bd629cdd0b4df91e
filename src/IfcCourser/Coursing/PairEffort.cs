namespace IfcCourser.Coursing;

/// <summary>
/// How much a wall's searches for pairs of rows may still do, counted in states: the same on every machine. A broken rule is
/// worth more of it than a cut; searches that try joints of all widths have a share of their own, so that they leave enough to the others.
/// </summary>
internal sealed class PairEffort
{
    private const long ForRules = 800_000;

    private const long ForCuts = 200_000;

    /// <summary>The part of the states that searches with joints of all widths may do beside the others.</summary>
    private const long Wide = 2;

    private long _most = ForCuts;
    private long _spent;
    private long _spentWide;

    /// <summary>Whether nothing is left.</summary>
    public bool IsSpent => _spent >= _most;

    /// <summary>Whether nothing is left for searches that try joints of all widths.</summary>
    public bool IsWideSpent => _spentWide >= _most / Wide;

    /// <summary>Sets what the searches may do from now on, by whether the best wall known breaks a rule.</summary>
    public void Allow(bool isBroken) => _most = isBroken ? ForRules : ForCuts;

    public void Spend(int states, bool isWide)
    {
        _spent += isWide ? 0 : states;
        _spentWide += isWide ? states : 0;
    }
}
