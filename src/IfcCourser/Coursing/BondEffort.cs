namespace IfcCourser.Coursing;

/// <summary>
/// How much the searches for a wall's bond may still do, all attempts together, counted in what they do: the same on every machine. Laying a
/// wall course by course is counted but never refused, so that any wall gets a bond; what would better it is.
/// Searches for pairs of rows have a share of their own, counted in states. A broken rule is worth more of it than a cut; those that try joints of all
/// widths have a share of that, so that they leave enough to the others. Searches that start anew are counted apart.
/// </summary>
internal sealed class BondEffort
{
    /// <summary>In pieces that searches lay: more than the hardest wall of the fixtures takes, a gable of octametric units.</summary>
    public const long Most = 500_000_000;

    /// <summary>The same for searches that start anew.</summary>
    private const long MostAnew = 100_000_000;

    /// <summary>So many comparisons take as long as laying a piece.</summary>
    private const long ComparisonsOfPiece = 64;

    /// <summary>So many comparisons take as long as an entry of a table of sums.</summary>
    private const long ComparisonsOfEntry = 40;

    private const long PairsForRules = 3_000_000;

    private const long PairsForCuts = 400_000;

    /// <summary>Pieces that searches of a segment may lay with joints of all widths after cut ones.</summary>
    private const long Widened = 10_000_000;

    /// <summary>By the widths of joints, the part of the states that such searches for pairs may do beside the others.</summary>
    private static readonly int[] _shares = [1, 2, 16];

    private readonly Spent _first = new();
    private readonly Spent _anew = new();
    private Spent _spent;
    private long _mostPairs = PairsForCuts;

    public BondEffort() => _spent = _first;

    /// <summary>Whether a first search was refused, so that a better bond may exist.</summary>
    public bool IsCutShort { get; private set; }

    /// <summary>Whether searches of a segment may still try joints of all widths after cut pieces.</summary>
    public bool MayWiden => _spent.Widened < Widened;

    /// <summary>Whether nothing is left for pairs with such joints.</summary>
    public bool ArePairsSpent(JointWidths widths) => _spent.Pairs[(int)widths] >= _mostPairs / _shares[(int)widths];

    /// <summary>Whether a search for something better may begin; notes where a first one may not.</summary>
    public bool MaySearch()
    {
        var isAnew = _spent == _anew;
        var isSpent = _spent.Comparisons >= (isAnew ? MostAnew : Most) * ComparisonsOfPiece;
        IsCutShort |= isSpent && !isAnew;
        return !isSpent;
    }

    /// <summary>Lets what follows, if it starts anew, be counted apart.</summary>
    public void StartAnew(bool isAnew) => _spent = isAnew ? _anew : _first;

    /// <summary>Counts pieces that searches with joints of all widths laid.</summary>
    public void SpendWide(long pieces) => _spent.Widened += pieces;

    /// <summary>Counts pieces that searches laid.</summary>
    public void SpendPieces(long pieces) => _spent.Comparisons += pieces * ComparisonsOfPiece;

    /// <summary>Counts entries of tables from which rows were chosen.</summary>
    public void SpendEntries(long entries) => _spent.Comparisons += entries * ComparisonsOfEntry;

    /// <summary>Counts joints, or costs of rows, that were held against others.</summary>
    public void SpendComparisons(long comparisons) => _spent.Comparisons += comparisons;

    /// <summary>Sets what searches for pairs may do from now on, by whether the best wall known breaks a rule.</summary>
    public void AllowPairs(bool isBroken) => _mostPairs = isBroken ? PairsForRules : PairsForCuts;

    public void SpendPairs(int states, JointWidths widths) => _spent.Pairs[(int)widths] += states;

    private sealed class Spent
    {
        public long[] Pairs { get; } = new long[_shares.Length];

        public long Comparisons { get; set; }

        public long Widened { get; set; }
    }
}
