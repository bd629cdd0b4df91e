namespace ReferenceOptimum.Reports;

/// <summary>What all walls together say.</summary>
internal sealed class Distribution(IReadOnlyCollection<WallResult> walls)
{
    /// <summary>Most cuts over the bound that larger walls may have together, in percent of the bound.</summary>
    private const double MostGapPercent = 1;

    private static readonly double[] _steps = [0, 1, 5, 10, 25];

    /// <summary>Walls whose cuts can be compared: no bond breaks fewer rules than ours.</summary>
    private readonly List<WallResult> _comparable = [.. walls.Where(wall => wall.BreaksLeast)];

    /// <summary>No broken rule that could be avoided, small walls equal, larger ones within the gap.</summary>
    public bool Holds => !walls.Any(wall => wall.BreaksAvoidably)
        && _comparable.Where(wall => wall.IsSmall).All(wall => wall.Ours.Cuts == wall.Found.Cuts)
        && Gap(_comparable.Where(wall => !wall.IsSmall)) <= MostGapPercent;

    public IEnumerable<string> Lines()
    {
        yield return $"{walls.Count} walls, {walls.Count(wall => wall.IsSmall)} of them small (up to {WallResult.MostPiecesOfSmall} pieces)";
        yield return $"rules (breaches, then bearings): fewest proven {_comparable.Count}, avoidable {walls.Count(wall => wall.BreaksAvoidably)}, "
            + $"undecided {walls.Count(wall => !wall.BreaksLeast && !wall.BreaksAvoidably)}; "
            + $"breaches ours {walls.Sum(wall => wall.Ours.Breaches)}, reference {walls.Sum(wall => wall.Found.Breaches)}, least {walls.Sum(wall => wall.Least.Breaches)}";
        foreach (var (name, group) in new[] { ("small", _comparable.Where(wall => wall.IsSmall)), ("larger", _comparable.Where(wall => !wall.IsSmall)) })
        {
            var list = group.ToList();
            yield return $"cuts of {list.Count} {name} walls: ours {list.Sum(wall => wall.Ours.Cuts)}, reference {list.Sum(wall => wall.Found.Cuts)}, "
                + $"least {list.Sum(wall => wall.Least.Cuts)}, gap {Gap(list):0.00} %; optimum known {list.Count(wall => wall.IsProven)}, "
                + $"ours optimal {list.Count(wall => wall.IsOptimal)}, ours worse {list.Count(wall => wall.Found.Cuts < wall.Ours.Cuts)}";
            yield return $"  gap by wall: {string.Join(", ", Steps(list))}";
        }

        yield return Holds ? "the bond holds against the reference" : "the bond does not hold against the reference";
    }

    private static double Gap(IEnumerable<WallResult> walls)
    {
        var (ours, least) = walls.Aggregate((0, 0), (sum, wall) => (sum.Item1 + wall.Ours.Cuts, sum.Item2 + wall.Least.Cuts));
        return ours == least ? 0 : 100.0 * (ours - least) / Math.Max(1, least);
    }

    private static IEnumerable<string> Steps(List<WallResult> walls)
    {
        var above = double.NegativeInfinity;
        foreach (var step in _steps)
        {
            yield return $"to {step} %: {walls.Count(wall => wall.GapPercent > above && wall.GapPercent <= step)}";
            above = step;
        }

        yield return $"more: {walls.Count(wall => wall.GapPercent > above)}";
    }
}
