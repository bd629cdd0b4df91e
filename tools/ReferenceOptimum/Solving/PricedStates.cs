namespace ReferenceOptimum.Solving;

/// <summary>The cheapest way to each state of a pair; its room is used again from pair to pair.</summary>
internal sealed class PricedStates
{
    private const int Nowhere = -1;

    private double[] _costs = [];
    private int[] _from = [];
    private PricedStep[] _steps = [];

    /// <summary>Begins anew with so many states, of which the first alone is reached.</summary>
    public void Start(int count)
    {
        if (_costs.Length < count)
        {
            (_costs, _from, _steps) = (new double[count], new int[count], new PricedStep[count]);
        }

        Array.Fill(_costs, double.PositiveInfinity, 0, count);
        (_costs[0], _from[0]) = (0, Nowhere);
    }

    public double Cost(int state) => _costs[state];

    public bool IsAnyReached(int first, int count) => _costs.AsSpan(first, count).ContainsAnyExcept(double.PositiveInfinity);

    public void Go(int from, int to, double cost, PricedStep step)
    {
        if (_costs[from] + cost < _costs[to])
        {
            (_costs[to], _from[to], _steps[to]) = (_costs[from] + cost, from, step);
        }
    }

    /// <summary>The steps to a state, the last one first.</summary>
    public IEnumerable<PricedStep> Way(int state)
    {
        for (var at = state; _from[at] != Nowhere; at = _from[at])
        {
            yield return _steps[at];
        }
    }
}
