using System.Globalization;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>
/// Strings as ISO 10303-21:2016, 6.4.3 writes them: quotes doubled, characters outside the basic alphabet by
/// control directives. Reading also takes raw UTF-8 or Latin-1 bytes and lone backslashes, which real files hold.
/// </summary>
public static class StepString
{
    /// <summary>The text between the quotes of a string.</summary>
    public static string Decode(ReadOnlySpan<byte> raw)
    {
        if (raw.IndexOfAny((byte)'\\', (byte)'\'') < 0)
        {
            return Plain(raw);
        }

        var text = new StringBuilder(raw.Length);
        var page = 1;
        while (!raw.IsEmpty)
        {
            var special = raw.IndexOfAny((byte)'\\', (byte)'\'');
            if (special < 0)
            {
                text.Append(Plain(raw));
                break;
            }

            text.Append(Plain(raw[..special]));
            raw = raw[special..];
            raw = raw[Special(raw, text, ref page)..];
        }

        return Paired(text.ToString());
    }

    /// <summary>Halves of characters beyond 16 bits that stand alone are no text: U+FFFD in their place.</summary>
    private static string Paired(string text) =>
        text.AsSpan().ContainsAnyInRange('\uD800', '\uDFFF') ? string.Concat(text.EnumerateRunes()) : text;

    /// <summary>A string with its quotes, in basic characters only.</summary>
    public static string Encode(string text)
    {
        var encoded = new StringBuilder(text.Length + 2).Append('\'');
        var isWide = false;
        foreach (var c in text)
        {
            var needsWide = c is < ' ' or > '~';
            if (needsWide != isWide)
            {
                encoded.Append(needsWide ? @"\X2\" : @"\X0\");
                isWide = needsWide;
            }

            if (isWide)
            {
                encoded.Append(((int)c).ToString("X4", CultureInfo.InvariantCulture));
            }
            else
            {
                encoded.Append(c).Append(c is '\'' or '\\' ? c : string.Empty);
            }
        }

        return encoded.Append(isWide ? @"\X0\" : string.Empty).Append('\'').ToString();
    }

    /// <summary>Appends what the quote or directive at the start stands for; returns the number of bytes it takes.</summary>
    private static int Special(ReadOnlySpan<byte> raw, StringBuilder text, ref int page)
    {
        if (raw[0] == '\'')
        {
            text.Append('\'');
            return raw.StartsWith("''"u8) ? 2 : 1;
        }

        if (raw.StartsWith(@"\\"u8))
        {
            text.Append('\\');
            return 2;
        }

        if (raw.StartsWith(@"\S\"u8) && raw.Length > 3)
        {
            text.Append(PageCharacter(page, (byte)(raw[3] | 0x80)));
            return 4;
        }

        if (raw.StartsWith(@"\P"u8) && raw.Length > 3 && raw[3] == '\\' && raw[2] is >= (byte)'A' and <= (byte)'I')
        {
            page = raw[2] - 'A' + 1;
            return 4;
        }

        return raw switch
        {
            _ when raw.StartsWith(@"\X2\"u8) => Run(raw, 4, text),
            _ when raw.StartsWith(@"\X4\"u8) => Run(raw, 8, text),
            _ when raw.StartsWith(@"\X\"u8) && TryHex(raw, 3, 2, out var code) => Append(text, code, 5),
            _ => Append(text, '\\', 1),
        };
    }

    /// <summary>Code points of four or eight digits up to the closing <c>\X0\</c>.</summary>
    private static int Run(ReadOnlySpan<byte> raw, int digits, StringBuilder text)
    {
        var i = 4;
        while (TryHex(raw, i, digits, out var code))
        {
            Append(text, code, digits);
            i += digits;
        }

        return raw[i..].StartsWith(@"\X0\"u8) ? i + 4 : i;
    }

    private static bool TryHex(ReadOnlySpan<byte> raw, int start, int digits, out int code)
    {
        code = 0;
        return raw.Length >= start + digits
            && int.TryParse(raw.Slice(start, digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out code);
    }

    private static int Append(StringBuilder text, int code, int taken)
    {
        if (code is >= 0 and <= 0xFFFF)
        {
            text.Append((char)code);
        }
        else
        {
            text.Append(Rune.IsValid(code) ? new Rune(code).ToString() : "\uFFFD");
        }

        return taken;
    }

    /// <summary>A character of the upper half of ISO 8859-1 to -9.</summary>
    private static string PageCharacter(int page, byte b)
    {
        const int FirstIsoPage = 28590;
        var encoding = page == 1 ? Encoding.Latin1 : CodePagesEncodingProvider.Instance.GetEncoding(FirstIsoPage + page);
        return (encoding ?? Encoding.Latin1).GetString([b]);
    }

    private static string Plain(ReadOnlySpan<byte> raw)
    {
        if (!raw.ContainsAnyExceptInRange((byte)0, (byte)0x7F))
        {
            return Encoding.ASCII.GetString(raw);
        }

        return (System.Text.Unicode.Utf8.IsValid(raw) ? Encoding.UTF8 : Encoding.Latin1).GetString(raw);
    }
}
