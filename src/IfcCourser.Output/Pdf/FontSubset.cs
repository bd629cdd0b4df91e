using System.Buffers.Binary;
using System.Text;

namespace IfcCourser.Output.Pdf;

/// <summary>A font program with some glyphs of another, numbered anew (ISO/IEC 14496-22, 4 and 5).</summary>
internal static class FontSubset
{
    private const int DirectoryEntry = 16;
    private const int PlaceOfCheckSum = 8;

    // Flags of the parts of a composed glyph (5.3.3).
    private const int WordArguments = 0x1;
    private const int HasScale = 0x8;
    private const int MoreParts = 0x20;
    private const int HasTwoScales = 0x40;
    private const int HasMatrix = 0x80;

    /// <summary>The program: glyph i is the font's <paramref name="glyphs"/>[i]; parts of composed glyphs stand behind.</summary>
    public static byte[] Of(TrueTypeFont font, ImmutableArray<int> glyphs)
    {
        var all = glyphs.ToList();
        var outlines = new List<byte[]>();
        for (var i = 0; i < all.Count; i++)
        {
            outlines.Add(Renumbered(font.Outline(all[i]).ToArray(), all));
        }

        var (outlineTable, places) = Joined(outlines);
        return Program(new SortedDictionary<string, byte[]>(StringComparer.Ordinal)
        {
            ["cvt "] = font.Table("cvt ").ToArray(),
            ["fpgm"] = font.Table("fpgm").ToArray(),
            ["glyf"] = outlineTable,
            ["head"] = Patched(font.Table("head"), 50, 1),
            ["hhea"] = Patched(font.Table("hhea"), 34, all.Count),
            ["hmtx"] = [.. all.SelectMany(glyph => U16(font.Advance(glyph)).Concat(U16(font.SideBearing(glyph))))],
            ["loca"] = places,
            ["maxp"] = Patched(font.Table("maxp"), 4, all.Count),
            ["prep"] = font.Table("prep").ToArray(),
        });
    }

    /// <summary>A composed glyph's parts are looked up among all glyphs, and added where they are missing.</summary>
    private static byte[] Renumbered(byte[] outline, List<int> all)
    {
        if (outline.Length == 0 || BinaryPrimitives.ReadInt16BigEndian(outline) >= 0)
        {
            return outline;
        }

        var flags = MoreParts;
        for (var at = 10; (flags & MoreParts) != 0;)
        {
            flags = BinaryPrimitives.ReadUInt16BigEndian(outline.AsSpan(at));
            var place = outline.AsSpan(at + 2);
            var part = BinaryPrimitives.ReadUInt16BigEndian(place);
            if (!all.Contains(part))
            {
                all.Add(part);
            }

            BinaryPrimitives.WriteUInt16BigEndian(place, (ushort)all.IndexOf(part));
            at += 4 + ((flags & WordArguments) != 0 ? 4 : 2) + ((flags & HasScale) != 0 ? 2 : (flags & HasTwoScales) != 0 ? 4 : (flags & HasMatrix) != 0 ? 8 : 0);
        }

        return outline;
    }

    /// <summary>The table of outlines, each on a multiple of four bytes, and the table of their places.</summary>
    private static (byte[] Outlines, byte[] Places) Joined(List<byte[]> outlines)
    {
        var (bytes, places) = (new List<byte>(), new List<byte>());
        foreach (var outline in outlines)
        {
            places.AddRange(U32((uint)bytes.Count));
            bytes.AddRange(Padded(outline));
        }

        places.AddRange(U32((uint)bytes.Count));
        return ([.. bytes], [.. places]);
    }

    private static byte[] Program(SortedDictionary<string, byte[]> tables)
    {
        // The search fields tell the largest power of two of entries (5.2).
        var powers = (int)Math.Log2(tables.Count);
        var search = DirectoryEntry << powers;
        var head = new List<byte>([0, 1, 0, 0, .. U16(tables.Count), .. U16(search), .. U16(powers), .. U16((DirectoryEntry * tables.Count) - search)]);
        var body = new List<byte>();
        var start = head.Count + (DirectoryEntry * tables.Count);
        var placeOfHead = 0;
        BinaryPrimitives.WriteUInt32BigEndian(tables["head"].AsSpan(PlaceOfCheckSum), 0);
        foreach (var (tag, table) in tables)
        {
            placeOfHead = tag == "head" ? start + body.Count : placeOfHead;
            head.AddRange([.. Encoding.ASCII.GetBytes(tag), .. U32(CheckSum(table)), .. U32((uint)(start + body.Count)), .. U32((uint)table.Length)]);
            body.AddRange(Padded(table));
        }

        byte[] program = [.. head, .. body];
        BinaryPrimitives.WriteUInt32BigEndian(program.AsSpan(placeOfHead + PlaceOfCheckSum), unchecked(0xB1B0AFBA - CheckSum(program)));
        return program;
    }

    private static uint CheckSum(byte[] table) =>
        Padded(table).Chunk(4).Aggregate(0u, (sum, word) => unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(word)));

    private static byte[] Padded(byte[] bytes) => [.. bytes, .. new byte[(4 - (bytes.Length % 4)) % 4]];

    private static byte[] Patched(ReadOnlySpan<byte> table, int at, int value)
    {
        var copy = table.ToArray();
        BinaryPrimitives.WriteUInt16BigEndian(copy.AsSpan(at), (ushort)value);
        return copy;
    }

    private static byte[] U16(int value) => [(byte)((value >> 8) & 0xFF), (byte)(value & 0xFF)];

    private static byte[] U32(uint value) => [.. U16((int)(value >> 16)), .. U16((int)(value & 0xFFFF))];
}
