using System.Collections.Immutable;
using System.Text;
using FixtureMaker.Ifc;

namespace FixtureMaker.Cases.Oddities;

/// <summary>Oddities of the bytes: letters, line ends, comments, numbering.</summary>
internal static class FileOddities
{
    public static ImmutableArray<(string Name, byte[] Bytes)> All =>
    [
        ("names-escaped", Ascii(Escaped())),
        ("names-utf8", Encoding.UTF8.GetBytes(Written("names-utf8", "names in raw UTF-8", "Plain wall").Replace("'Plain wall'", "'Стена №1'", StringComparison.Ordinal))),
        ("names-latin1", Encoding.Latin1.GetBytes(Written("names-latin1", "names in raw Latin-1", "Plain wall").Replace("'Plain wall'", "'Außenwand'", StringComparison.Ordinal))),
        ("cr-only", Ascii(Written("cr-only", "lines end with a carriage return alone", "Wall").Replace('\n', '\r'))),
        ("byte-order-mark", [0xEF, 0xBB, 0xBF, .. Ascii(Written("byte-order-mark", "a byte-order mark in front", "Wall"))]),
        ("comments", Ascii(Commented(Written("comments", "comments and line breaks within instances", "Wall")))),
        ("ids-twice", Ascii(IdsTwice())),
    ];

    private static string Escaped() => HouseFile.Write(SmallModel.Of(
            "names-escaped", "names by every escape of the exchange structure", 0,
            OddityCases.Plain("Außenwand"), OddityCases.Plain("Wall S", 2000), OddityCases.Plain("Wall X", 4000), OddityCases.Plain("Wall X4", 6000)))
        .Replace("'Wall S'", @"'Au\S\_enwand S'", StringComparison.Ordinal) // _ is 5F; with its high bit DF, sharp s
        .Replace("'Wall X'", @"'Au\X\DFenwand X'", StringComparison.Ordinal)
        .Replace("'Wall X4'", @"'Wall \X4\0001F9F1\X0\'", StringComparison.Ordinal);

    // In the header, between instances, and within the wall's own, with a parenthesis and a quote in them.
    private static string Commented(string text) => text
        .Replace("FILE_SCHEMA", "/* a comment\n   over two lines: FILE_SCHEMA(('IFC2X3')); */\nFILE_SCHEMA", StringComparison.Ordinal)
        .Replace("DATA;\n", "DATA;\n/* it's (not) data; */\n", StringComparison.Ordinal)
        .Replace("=IFCWALL(", " =\n  IFCWALL /* the wall's */ (\n  ", StringComparison.Ordinal)
        .Replace("'Block wall 240',", "'Block wall 240' ,\n\t/* ) */ ", StringComparison.Ordinal);

    // The wall stands twice under its number, the second time with another name.
    private static string IdsTwice()
    {
        var edit = new StepEdit(SmallModel.Of("ids-twice", "an instance number given twice", 0, OddityCases.Plain("First")));
        return edit.Append(edit.LineOf("IFCWALL").Replace("'First'", "'Second'", StringComparison.Ordinal)).Text;
    }

    private static string Written(string key, string title, string wall) => HouseFile.Write(SmallModel.Of(key, title, 0, OddityCases.Plain(wall)));

    private static byte[] Ascii(string text) => Encoding.ASCII.GetBytes(text);
}
