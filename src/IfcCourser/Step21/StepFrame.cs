using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>What an earlier run added at the end of the last DATA section, where not a byte was changed since.</summary>
/// <param name="Start">Offset of the first added instance.</param>
/// <param name="End">Behind the comment that tells of it.</param>
public sealed record StepFrame(long Start, long End)
{
    private const string Closing = " */";

    /// <summary>The frame of an owner; null where there is none or any byte before its comment was changed.</summary>
    public static StepFrame? Find(StepFile file, string owner)
    {
        var rest = file.Bytes(file.EndOfData, (int)Math.Min(file.Size - file.EndOfData, int.MaxValue));
        var opening = Encoding.ASCII.GetBytes(Opening(owner));
        var place = rest.IndexOf(opening);
        var length = place < 0 ? -1 : rest[place..].IndexOf("*/"u8);
        if (length < 0)
        {
            return null;
        }

        var words = Encoding.ASCII.GetString(rest.Slice(place + opening.Length, length - opening.Length)).Split(' ');
        var comment = file.EndOfData + place;
        return long.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out var start)
            && start < comment
            && string.Equals(Comment(owner, start, HashBefore(file, comment)), Encoding.ASCII.GetString(rest.Slice(place, length + 2)), StringComparison.Ordinal)
                ? new StepFrame(start, comment + length + 2)
                : null;
    }

    internal static string Comment(string owner, long start, string hash) =>
        FormattableString.Invariant($"{Opening(owner)}{start} on; sha256 of all bytes before this comment: {hash}{Closing}");

    private static string Opening(string owner) => $"/* {owner}: instances added from byte ";

    private static string HashBefore(StepFile file, long end)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var copy = new StepCopy(file, Stream.Null, hash);
        copy.Original(0, end);
        return copy.Hash();
    }
}
