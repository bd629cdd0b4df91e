using System.Collections.Immutable;
using System.Text;
using IfcCourser.Catalogs;

namespace IfcCourser.Walls.Reading;

/// <summary>
/// Tells masonry from other materials by the catalog's words: found at the beginnings of words or, where a star stands
/// before them, anywhere in one ("*mauerwerk" in "Hintermauerwerk"). Case does not count; whatever is neither letter nor
/// digit parts words, as does a capital after a small letter ("RedBrick").
/// </summary>
public static class NameWords
{
    /// <summary>A name with the word of the catalog that decides on it; words that rule out come first.</summary>
    public static NameRead Read(Catalog catalog, NameKind kind, int? layer, string name)
    {
        var text = Parted(name);
        return Found(catalog.OtherWords, text) is { } other ? new NameRead(kind, layer, name, other, false)
            : Found(catalog.MasonryWords, text) is { } masonry ? new NameRead(kind, layer, name, masonry, true)
            : new NameRead(kind, layer, name, null, null);
    }

    /// <summary>True for masonry, false where any name rules it out, null where the names say nothing.</summary>
    public static bool? Verdict(IEnumerable<NameRead> names) => names.Aggregate((bool?)null, (verdict, name) => (verdict, name.IsMasonry) switch
    {
        (false, _) or (_, false) => false,
        (true, _) or (_, true) => true,
        _ => null,
    });

    private static string? Found(ImmutableArray<string> words, string text) => words.FirstOrDefault(word => Holds(text, word));

    private static bool Holds(string text, string word)
    {
        var (anywhere, ends) = (word.StartsWith('*'), word.EndsWith('.'));
        var sought = Parted(word).Trim();
        for (var at = text.IndexOf(sought, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(sought, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if ((anywhere || IsStart(text, at)) && (!ends || IsEnd(text, at + sought.Length)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsStart(string text, int at) =>
        at == 0 || !char.IsLetter(text[at - 1]) || (char.IsLower(text[at - 1]) && char.IsUpper(text[at]));

    private static bool IsEnd(string text, int at) => at == text.Length || !char.IsLetterOrDigit(text[at]);

    // "Sand-lime_brick" and "sand lime brick" are one name.
    private static string Parted(string name)
    {
        var text = new StringBuilder(name.Length);
        foreach (var c in name)
        {
            if (char.IsLetterOrDigit(c))
            {
                text.Append(c);
            }
            else if (text.Length > 0 && text[^1] != ' ')
            {
                text.Append(' ');
            }
        }

        return text.ToString();
    }
}
