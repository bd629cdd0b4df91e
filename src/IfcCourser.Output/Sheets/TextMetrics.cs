using System.Buffers;

namespace IfcCourser.Output.Sheets;

/// <summary>How much paper a line of text takes, whatever font draws it: never less than a wide sans serif face needs.</summary>
/// <remarks>Advance widths measured on DejaVu Sans 2.37, per thousand of the capitals' height (1493 of 2048 units).</remarks>
public static class TextMetrics
{
    /// <summary>How far letters reach below the base line, as a share of the capitals' height.</summary>
    public const double Descent = 0.3;

    private const int FirstAscii = ' ';

    /// <summary>For letters outside ASCII: as wide as the wide Cyrillic ones.</summary>
    private const int Other = 1500;

    private static readonly ImmutableArray<short> _widths =
    [
        436, 550, 631, 1149, 873, 1303, 1070, 377, 535, 535, 686, 1149, 436, 495, 436, 462, 873, 873, 873, 873, 873, 873, 873, 873,
        873, 873, 462, 462, 1149, 1149, 1149, 728, 1372, 938, 941, 958, 1056, 867, 789, 1063, 1031, 405, 405, 900, 764, 1184, 1026,
        1080, 827, 1080, 953, 871, 838, 1004, 938, 1356, 940, 838, 940, 535, 462, 535, 1149, 686, 686, 841, 871, 754, 871, 844, 483,
        871, 869, 381, 381, 794, 381, 1336, 869, 839, 871, 871, 564, 715, 538, 869, 812, 1122, 812, 812, 720, 873, 462, 873, 1149,
    ];

    /// <summary>Letters and signs that stand on the base line; outside ASCII any may hang below it.</summary>
    private static readonly SearchValues<char> _upright = SearchValues.Create(" !\"#%&'*+-.0123456789:<=>?ABCDEFGHIJKLMNOPRSTUVWXYZ^`abcdefhiklmnorstuvwxz~");

    /// <summary>Width of a line of text in paper millimetres.</summary>
    public static double Width(string text, double height)
    {
        var sum = 0;
        foreach (var c in text)
        {
            sum += c - FirstAscii is >= 0 and var i && i < _widths.Length ? _widths[i] : Other;
        }

        return sum * height / 1000;
    }

    /// <summary>The upright box around a text whose place and height are in paper millimetres; turned by 0 or 90 degrees.</summary>
    public static Box BoxOf(TextItem text)
    {
        var width = Width(text.Text, text.Height);
        var left = -width * text.ShareBefore;
        var bottom = text.IsMiddle ? -text.Height / 2 : 0;
        var box = new Box(left, bottom - (Descent * text.Height), left + width, bottom + text.Height);
        var turned = text.Degrees == 0 ? box : new Box(-box.Top, box.Left, -box.Bottom, box.Right);
        return turned.Moved(text.At);
    }

    /// <summary>The box around the letters themselves: down to the base line, or below it where a letter hangs.</summary>
    /// <inheritdoc cref="BoxOf"/>
    public static Box InkOf(TextItem text)
    {
        var box = BoxOf(text);
        var free = text.Text.AsSpan().ContainsAnyExcept(_upright) ? 0 : Descent * text.Height;
        return text.Degrees == 0 ? box with { Bottom = box.Bottom + free } : box with { Right = box.Right - free };
    }

    /// <summary>Lines of words, none wider than <paramref name="width"/> paper millimetres unless it is one word.</summary>
    public static ImmutableArray<string> Wrap(string text, double height, double width)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = string.Empty;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && Width(longer, height) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        lines.Add(line);
        return lines.ToImmutable();
    }

    /// <summary>As <see cref="Wrap"/>, words that are too wide cut where they must be: nothing is lost.</summary>
    public static ImmutableArray<string> WrapAll(string text, double height, double width) => [.. Wrap(text, height, width).SelectMany(line => Cut(line, height, width))];

    private static IEnumerable<string> Cut(string line, double height, double width)
    {
        while (line.Length > 1 && Width(line, height) > width)
        {
            var kept = Enumerable.Range(1, line.Length - 1).Last(length => length == 1 || Width(line[..length], height) <= width);
            yield return line[..kept];
            line = line[kept..];
        }

        yield return line;
    }

    /// <summary>The text, shortened with an ellipsis where it is wider than <paramref name="width"/> paper millimetres.</summary>
    public static string Fit(string text, double height, double width)
    {
        if (Width(text, height) <= width)
        {
            return text;
        }

        var length = text.Length;
        while (length > 0 && Width(text[..length] + "...", height) > width)
        {
            length--;
        }

        return text[..length].TrimEnd() + "...";
    }
}
