namespace IfcCourser.Settings;

/// <summary>Finds the known name that someone who mistyped most likely meant.</summary>
public static class NearestName
{
    /// <summary>
    /// The known name with the fewest changes (a letter added, dropped, replaced, or two neighbours swapped), the first
    /// where equal; null where there is none, or more than a third of the letters would have to change.
    /// </summary>
    public static string? Of(string name, IEnumerable<string> known)
    {
        var best = known.Select(candidate => (Name: candidate, Distance: Distance(name, candidate))).OrderBy(pair => pair.Distance).FirstOrDefault();
        return best.Name is not null && best.Distance <= Math.Max(1, best.Name.Length / 3) ? best.Name : null;
    }

    /// <summary>The names most like one that matched nothing, the most like first: those that hold it, then by changes; case does not count.</summary>
    /// <param name="name">May hold * and ?, which do not count either.</param>
    public static IEnumerable<string> Ranked(string name, IEnumerable<string> known)
    {
        var plain = name.Replace("*", string.Empty, StringComparison.Ordinal).Replace("?", string.Empty, StringComparison.Ordinal).ToUpperInvariant();
        return known.Distinct(StringComparer.Ordinal)
            .Select(candidate => (Name: candidate, Upper: candidate.ToUpperInvariant()))
            .OrderByDescending(candidate => candidate.Upper.Contains(plain, StringComparison.Ordinal))
            .ThenBy(candidate => Distance(plain, candidate.Upper))
            .ThenBy(candidate => candidate.Name, StringComparer.Ordinal)
            .Select(candidate => candidate.Name);
    }

    /// <summary>Optimal string alignment distance, row by row.</summary>
    private static int Distance(string a, string b)
    {
        int[] before = [], last = [.. Enumerable.Range(0, b.Length + 1)];
        for (var i = 1; i <= a.Length; i++)
        {
            var row = new int[b.Length + 1];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                row[j] = Math.Min(last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1), 1 + Math.Min(last[j], row[j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, last) = (last, row);
        }

        return last[b.Length];
    }
}
