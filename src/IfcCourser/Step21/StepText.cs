using System.Buffers;
using System.Runtime.CompilerServices;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>The lexical ground rules of ISO 10303-21:2016, clause 6: blanks, comments, names, where strings end.</summary>
internal static class StepText
{
    public static readonly SearchValues<byte> NameBytes =
        SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-"u8);

    private static readonly SearchValues<byte> _stringStops = SearchValues.Create("'\n\r"u8);

    public static bool IsLetter(byte b) => char.IsAsciiLetter((char)b);

    public static bool IsDigit(byte b) => char.IsAsciiDigit((char)b);

    public static bool IsBlank(byte b) => b is (byte)' ' or (byte)'\n' or (byte)'\r' or (byte)'\t' or 0x0B or 0x0C;

    /// <summary>The byte at a place, zero behind the end.</summary>
    public static byte At(ReadOnlySpan<byte> text, int i) => (uint)i < (uint)text.Length ? text[i] : (byte)0;

    /// <summary>The next place that is neither blank nor inside a comment; an open comment reaches to the end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static int SkipBlanks(ReadOnlySpan<byte> text, int i) =>
        (uint)i < (uint)text.Length && text[i] > ' ' && text[i] != '/' ? i : SkipMany(text, i);

    /// <summary>The place behind a comment that starts at <paramref name="i"/>.</summary>
    public static int EndOfComment(ReadOnlySpan<byte> text, int i)
    {
        var length = text[(i + 2)..].IndexOf("*/"u8);
        return length < 0 ? text.Length : i + length + 4;
    }

    /// <summary>
    /// The place behind the closing quote of a string whose first byte is at <paramref name="i"/>; -1 where the text ends
    /// first; the complement of a place where the next instance starts on a new line before the quote is closed.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static int EndOfString(ReadOnlySpan<byte> text, int i)
    {
        while (true)
        {
            var length = text[i..].IndexOfAny(_stringStops);
            if (length < 0)
            {
                return -1;
            }

            i += length + 1;
            if (text[i - 1] == '\'')
            {
                return i;
            }

            if (IsInstanceStart(text, i))
            {
                return ~i;
            }
        }
    }

    /// <summary>Whether <c>#</c>, digits and <c>=</c> stand at a place.</summary>
    public static bool IsInstanceStart(ReadOnlySpan<byte> text, int i)
    {
        if (At(text, i) != '#')
        {
            return false;
        }

        var end = i + 1;
        while (IsDigit(At(text, end)))
        {
            end++;
        }

        return end > i + 1 && At(text, SkipBlanks(text, end)) == '=';
    }

    /// <summary>The keyword at the start, upper-case; empty where there is none.</summary>
    public static string Keyword(ReadOnlySpan<byte> text)
    {
        const int Longest = 128;
        var start = text[..Math.Min(Longest, text.Length)];
        var end = start.IndexOfAnyExcept(NameBytes);
        return Encoding.ASCII.GetString(end < 0 ? start : start[..end]).ToUpperInvariant();
    }

    /// <summary>
    /// The place behind the next semicolon that is in no string and no comment, or the start of the next instance where a string is not closed
    /// before it; -1 where there is neither.
    /// </summary>
    public static int EndOfStatement(ReadOnlySpan<byte> text, int i)
    {
        while (true)
        {
            var length = text[i..].IndexOfAny((byte)';', (byte)'\'', (byte)'/');
            if (length < 0)
            {
                return -1;
            }

            i += length;
            switch (text[i])
            {
                case (byte)';':
                    return i + 1;
                case (byte)'\'':
                    var end = EndOfString(text, i + 1);
                    if (end < 0)
                    {
                        return end == -1 ? -1 : ~end;
                    }

                    i = end;
                    break;
                default:
                    i = At(text, i + 1) == '*' ? EndOfComment(text, i) : i + 1;
                    break;
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static int SkipMany(ReadOnlySpan<byte> text, int i)
    {
        while ((uint)i < (uint)text.Length)
        {
            if (IsBlank(text[i]))
            {
                i++;
            }
            else if (text[i] == '/' && At(text, i + 1) == '*')
            {
                i = EndOfComment(text, i);
            }
            else
            {
                break;
            }
        }

        return i;
    }
}
