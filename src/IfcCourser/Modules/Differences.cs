using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>
/// Places on a line, known by bounds of how far they lie from each other. All bounds that follow are the shortest paths of
/// the graph whose edges the given ones are (Floyd and Warshall); where a place comes before itself, nothing fits.
/// </summary>
internal sealed class Differences
{
    private const long Unbound = long.MaxValue / 4;

    /// <summary>Most that the second place lies behind the first.</summary>
    private readonly long[][] _most;

    /// <param name="count">Number of places.</param>
    public Differences(int count)
    {
        _most = [.. Enumerable.Range(0, count).Select(i => Enumerable.Range(0, count).Select(j => i == j ? 0 : Unbound).ToArray())];
    }

    /// <summary>States how far, at least and at most, one place lies behind another.</summary>
    public void Between(int from, int to, Length least, Length? most)
    {
        _most[to][from] = Math.Min(_most[to][from], -least.Nanometres);
        _most[from][to] = Math.Min(_most[from][to], most?.Nanometres ?? Unbound);
    }

    /// <summary>Draws all conclusions; false where the bounds contradict each other.</summary>
    public bool Solve()
    {
        var count = _most.Length;
        for (var via = 0; via < count; via++)
        {
            for (var from = 0; from < count; from++)
            {
                for (var to = 0; to < count; to++)
                {
                    if (_most[from][via] < Unbound && _most[via][to] < Unbound)
                    {
                        _most[from][to] = Math.Min(_most[from][to], _most[from][via] + _most[via][to]);
                    }
                }
            }
        }

        return Enumerable.Range(0, count).All(i => _most[i][i] >= 0);
    }

    public Length Least(int from, int to) => new(-_most[to][from]);

    public Length Most(int from, int to) => new(_most[from][to]);
}
