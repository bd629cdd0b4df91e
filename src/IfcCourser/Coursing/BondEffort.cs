namespace IfcCourser.Coursing;

/// <summary>
/// How much the searches for a wall's bond may still do, all attempts together, counted in what they do: the same on every machine. Laying a
/// wall course by course is counted but never refused, so that any wall gets a bond; what would better it is.
/// Searches for pairs of rows have a share of their own, counted in states. A broken rule is worth more of it than a cut; those that try joints of all
/// widths have a share of that, so that they leave enough to the others.
/// </summary>
internal sealed class BondEffort
{
    /// <summary>In pieces that searches lay: more than the hardest wall of the fixtures takes, a gable of octametric units.</summary>
    public const long Most = 500_000_000;

    /// <summary>So many comparisons take as long as laying a piece.</summary>
    private const long ComparisonsOfPiece = 64;

    /// <summary>So many comparisons take as long as an entry of a table of sums.</summary>
    private const long ComparisonsOfEntry = 40;

    private const long PairsForRules = 800_000;

    private const long PairsForCuts = 200_000;

    /// <summary>The part of the states that searches with joints of all widths may do beside the others.</summary>
    private const long Wide = 2;

    private long _comparisons;
    private long _mostPairs = PairsForCuts;
    private long _pairs;
    private long _widePairs;

    /// <summary>Whether a search was refused, so that a better bond may exist.</summary>
    public bool IsCutShort { get; private set; }

    /// <summary>Whether nothing is left for pairs.</summary>
    public bool ArePairsSpent => _pairs >= _mostPairs;

    /// <summary>Whether nothing is left for pairs with joints of all widths.</summary>
    public bool AreWidePairsSpent => _widePairs >= _mostPairs / Wide;

    /// <summary>Whether a search for something better may begin; notes where it may not.</summary>
    public bool MaySearch()
    {
        var isSpent = _comparisons >= Most * ComparisonsOfPiece;
        IsCutShort |= isSpent;
        return !isSpent;
    }

    /// <summary>Counts pieces that searches laid.</summary>
    public void SpendPieces(long pieces) => _comparisons += pieces * ComparisonsOfPiece;

    /// <summary>Counts entries of tables from which rows were chosen.</summary>
    public void SpendEntries(long entries) => _comparisons += entries * ComparisonsOfEntry;

    /// <summary>Counts joints, or costs of rows, that were held against others.</summary>
    public void SpendComparisons(long comparisons) => _comparisons += comparisons;

    /// <summary>Sets what searches for pairs may do from now on, by whether the best wall known breaks a rule.</summary>
    public void AllowPairs(bool isBroken) => _mostPairs = isBroken ? PairsForRules : PairsForCuts;

    public void SpendPairs(int states, bool isWide)
    {
        _pairs += isWide ? 0 : states;
        _widePairs += isWide ? states : 0;
    }
}
