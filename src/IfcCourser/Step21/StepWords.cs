using System.Text;

namespace IfcCourser.Step21;

/// <summary>
/// Words of files in upper case: names of types, enumerations. A file repeats a few of them hundreds of thousands of times, so the latest of each slot is kept.
/// Which are kept changes no answer, and threads may write over each other's.
/// </summary>
internal static class StepWords
{
    private const int Slots = 1024;

    /// <summary>Longer ones are no words of a schema.</summary>
    private const int Longest = 64;

    private static readonly string?[] _kept = new string[Slots];

    /// <summary>The bytes as text, ASCII letters in upper case.</summary>
    public static string Upper(ReadOnlySpan<byte> word)
    {
        if (word.Length > Longest)
        {
            return Encoding.ASCII.GetString(word).ToUpperInvariant();
        }

        ref var kept = ref _kept[Hash(word)];
        var known = kept;
        // Bytes beyond ASCII equal nothing and are read anew each time.
        return known is not null && Ascii.EqualsIgnoreCase(word, known)
            ? known
            : kept = Encoding.ASCII.GetString(word).ToUpperInvariant();
    }

    private static int Hash(ReadOnlySpan<byte> word)
    {
        const uint Prime = 16777619;
        var hash = (uint)word.Length;
        foreach (var b in word)
        {
            // Letters that differ in case alone share a slot.
            hash = unchecked((hash ^ (b | 0x20u)) * Prime);
        }

        return (int)((hash ^ (hash >> 16)) % Slots);
    }
}
