namespace ReferenceOptimum.Sawing;

/// <summary>Saw lists beside the proven optimum.</summary>
internal static class SawComparison
{
    /// <summary>Prints a line for each list and the sum; whether none takes a unit that could be saved and none claims a bound that does not hold.</summary>
    public static bool Holds(int seed, int from, int count, double effort)
    {
        var (pieces, ours, found, least, optimal, undecided) = (0, 0, 0, 0, 0, 0);
        var wrong = new List<int>();
        for (var number = from; number < from + count; number++)
        {
            var problem = SawProblems.Make(seed, number);
            var (units, claimed, isSound) = SawnUnits.Of(problem);
            var (best, bound) = SawOptimum.Of(problem, effort);
            var few = Math.Min(best ?? units, units);
            var isWrong = !isSound || few < units || claimed > few;
            var sign = isWrong ? '!' : bound == units ? '=' : '?';
            Console.WriteLine($"{sign} {problem.Name}: {problem.Catalog}, {problem.Pieces.Length} pieces, units ours {units}, found {best?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "-"}, least {bound}, least by the list {claimed}{(isSound ? "" : ", a unit does not hold its pieces")}");
            (pieces, ours, found, least) = (pieces + problem.Pieces.Length, ours + units, found + few, least + bound);
            (optimal, undecided) = (optimal + (bound == units ? 1 : 0), undecided + (!isWrong && bound < units ? 1 : 0));
            if (isWrong)
            {
                wrong.Add(number);
            }
        }

        var gap = least == 0 ? 0 : 100.0 * (ours - least) / least;
        Console.WriteLine(
            $"{count} lists, {pieces} pieces: units ours {ours}, reference {found}, least {least}, gap {gap:0.00} %; optimal {optimal}, undecided {undecided}, worse or wrong {wrong.Count}; saved against no reuse {pieces - ours}");
        return wrong.Count == 0;
    }
}
