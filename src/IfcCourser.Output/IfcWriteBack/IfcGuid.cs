using System.Security.Cryptography;
using System.Text;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>
/// GlobalIds made from identity, not content, so that the same set keeps its GlobalId from run to run: a hash of the host's
/// GlobalId, the role and an ordinal, that is counted on while the file already holds the result.
/// </summary>
internal sealed class IfcGuid
{
    private const int Characters = 22;
    private const string Digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

    private readonly HashSet<string> _used;

    /// <param name="file">Its GlobalIds are not given again.</param>
    /// <param name="dropped">Instances whose GlobalIds are free.</param>
    public IfcGuid(StepFile file, IReadOnlySet<long> dropped)
    {
        _used = new HashSet<string>(StringComparer.Ordinal);
        foreach (var id in file.Ids)
        {
            if (FirstString(file, id) is { IsEmpty: false } guid && IsOfHash(guid) && !dropped.Contains(id))
            {
                _used.Add(Encoding.ASCII.GetString(guid));
            }
        }
    }

    public string For(string host, string role)
    {
        for (var ordinal = 0; ; ordinal++)
        {
            var guid = Of(host, role, ordinal);
            if (_used.Add(guid))
            {
                return guid;
            }
        }
    }

    /// <summary>
    /// The first 128 bits of the SHA-256 of the identity as a UUID of version 8 (RFC 9562, 5.8), in the 22 characters of
    /// IfcGloballyUniqueId (ISO 16739-1, 8.11.2): base 64, most significant digit first, the first digit holding two bits.
    /// </summary>
    internal static string Of(string host, string role, int ordinal)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(FormattableString.Invariant($"{host}\n{role}\n{ordinal}")));
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return Compress(hash.AsSpan(0, 16));
    }

    internal static string Compress(ReadOnlySpan<byte> uuid)
    {
        var value = UInt128.Zero;
        foreach (var b in uuid)
        {
            value = (value << 8) | b;
        }

        return string.Create(Characters, value, (text, rest) =>
        {
            for (var i = text.Length - 1; i >= 0; i--)
            {
                text[i] = Digits[(int)(rest & 63)];
                rest >>= 6;
            }
        });
    }

    /// <summary>Whether the text may be a UUID of version 8: no other can be given, and a large model has millions of others.</summary>
    private static bool IsOfHash(ReadOnlySpan<byte> guid)
    {
        // The version's four bits are 79 to 76 of 127 to 0: the lower two of one digit of six bits and the upper two of the next.
        const int First = 8, Second = 9;
        var (first, second) = (Digits.IndexOf((char)guid[First], StringComparison.Ordinal), Digits.IndexOf((char)guid[Second], StringComparison.Ordinal));
        return first >= 0 && second >= 0 && (((first << 2) | (second >> 4)) & 0xF) == 8;
    }

    /// <summary>An instance's first parameter where it has the length of a GlobalId; else empty, or what is no GlobalId.</summary>
    private static ReadOnlySpan<byte> FirstString(StepFile file, long id)
    {
        // Room for a number, a name and a GlobalId as programs write them; only where there is more before it is the instance's end looked for.
        const int Usual = 128;
        var head = file.HeadOf(id, Usual);
        var quote = FirstValue(head);
        if (quote < 0 || quote + Characters + 1 >= head.Length)
        {
            head = file.TextOf(id);
            quote = FirstValue(head);
        }

        return quote >= 0 && quote + Characters + 1 < head.Length && head[quote] == '\'' && head[quote + Characters + 1] == '\''
            ? head.Slice(quote + 1, Characters)
            : [];
    }

    /// <summary>Where an instance's first parameter starts; -1 where the text ends before it.</summary>
    private static int FirstValue(ReadOnlySpan<byte> text)
    {
        var open = text.IndexOf((byte)'(');
        var length = open < 0 ? -1 : text[(open + 1)..].IndexOfAnyExcept(" \t\r\n"u8);
        return length < 0 ? -1 : open + 1 + length;
    }
}
