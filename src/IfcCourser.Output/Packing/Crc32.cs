namespace IfcCourser.Output.Packing;

/// <summary>The check of PNG chunks and zip entries (ISO 3309; polynomial EDB88320 as RFC 1952, 8 has it).</summary>
internal static class Crc32
{
    private static readonly ImmutableArray<uint> _table = [.. Enumerable.Range(0, 256).Select(i => Enumerable.Range(0, 8).Aggregate((uint)i, (c, _) => (c & 1) != 0 ? 0xEDB88320 ^ (c >> 1) : c >> 1))];

    public static uint Of(params ReadOnlySpan<byte> data)
    {
        var crc = uint.MaxValue;
        foreach (var value in data)
        {
            crc = _table[(int)((crc ^ value) & 0xFF)] ^ (crc >> 8);
        }

        return ~crc;
    }
}
