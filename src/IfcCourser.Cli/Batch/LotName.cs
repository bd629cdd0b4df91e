using System.Text;

namespace IfcCourser.Cli.Batch;

/// <summary>Which names of lots may be names of folders on every system.</summary>
internal static class LotName
{
    private const int Longest = 100;

    /// <summary>Names of devices, which one widespread system keeps for itself whatever follows a full stop.</summary>
    private static readonly HashSet<string> _devices = new(
        ["CON", "PRN", "AUX", "NUL", .. Enumerable.Range(0, 10).SelectMany(i => new[] { FormattableString.Invariant($"COM{i}"), FormattableString.Invariant($"LPT{i}") })],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>Letters, digits, marks, spaces and - _ . + # within; no full stop or space at either end, no minus in front.</summary>
    public static bool IsSafe(string name) =>
        name.Length is > 0 and <= Longest
        && name.EnumerateRunes().All(rune => Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or '-' or '_' or '.' or '+' or '#')
        && name[0] is not ('.' or ' ' or '-')
        && name[^1] is not ('.' or ' ')
        && !_devices.Contains(name.Split('.')[0].TrimEnd());
}
