using System.Security.Cryptography;
using System.Text;

namespace FixtureMaker.Step;

/// <summary>IFC GlobalIds derived from names: the first 128 bits of the name's SHA-256, written in the 22 characters of
/// buildSMART's base-64 form (2 bits in the first character, 6 in each other).</summary>
internal static class GlobalIds
{
    private const string Digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

    public static string FromName(string name) =>
        FromBits(SHA256.HashData(Encoding.UTF8.GetBytes(name)).AsSpan(0, 16));

    /// <summary>The 22 characters of 16 bytes, most significant first.</summary>
    public static string FromBits(ReadOnlySpan<byte> bits)
    {
        var number = UInt128.Zero;
        foreach (var part in bits)
        {
            number = (number << 8) | part;
        }

        var text = new char[22];
        for (var i = 21; i >= 0; i--)
        {
            text[i] = Digits[(int)(number & 63)];
            number >>= 6;
        }

        return new string(text);
    }
}
