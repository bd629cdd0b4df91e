using IfcCourser.Catalogs;

namespace IfcCourser.Walls.Reading;

/// <summary>Tells masonry from other materials by the catalog's words, matched at the start of a word, case-insensitive.</summary>
public static class NameWords
{
    /// <summary>True for masonry, false for another material, null where the names say nothing.</summary>
    public static bool? SayMasonry(Catalog catalog, params ReadOnlySpan<string?> names)
    {
        bool? verdict = null;
        foreach (var name in names)
        {
            if (name is null)
            {
                continue;
            }

            if (catalog.OtherWords.Any(word => Holds(name, word)))
            {
                return false;
            }

            verdict = catalog.MasonryWords.Any(word => Holds(name, word)) ? true : verdict;
        }

        return verdict;
    }

    private static bool Holds(string name, string word)
    {
        for (var at = name.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = name.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if (at == 0 || !char.IsLetter(name[at - 1]))
            {
                return true;
            }
        }

        return false;
    }
}
