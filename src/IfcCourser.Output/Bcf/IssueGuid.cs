using System.Security.Cryptography;
using System.Text;

namespace IfcCourser.Output.Bcf;

/// <summary>GUIDs made from identity: the first 128 bits of a SHA-256 as a UUID of version 8 (RFC 9562, 5.8), in lower case.</summary>
internal static class IssueGuid
{
    public static string Of(params ReadOnlySpan<string> identity)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', identity!)));
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return new Guid(hash.AsSpan(0, 16), bigEndian: true).ToString("D");
    }
}
