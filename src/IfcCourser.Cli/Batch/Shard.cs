using System.Globalization;
using IfcCourser.Findings;

namespace IfcCourser.Cli.Batch;

/// <summary>A share of a batch, for one of several machines.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Count">Shares in all.</param>
internal sealed record Shard(int Number, int Count)
{
    public static readonly Shard Whole = new(1, 1);

    /// <summary>Reads K/N.</summary>
    public static Outcome<Shard> Parse(string text) =>
        text.Split('/') is [var number, var count]
        && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var k)
        && int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var n)
        && k >= 1 && k <= n
            ? new Shard(k, n)
            : Messages.BadShard(text);

    /// <summary>
    /// The works of this share, the largest first: each work, from the largest down, goes to the share that has least so far. What
    /// is laid out at once stays together.
    /// </summary>
    public List<LotWork> Of(IEnumerable<LotWork> works)
    {
        var loads = new long[Count];
        var own = new List<LotWork>();
        foreach (var work in works.OrderByDescending(work => work.Size).ThenBy(work => work.PlanKey, StringComparer.Ordinal))
        {
            var least = Array.IndexOf(loads, loads.Min());
            loads[least] += work.Size;
            if (least == Number - 1)
            {
                own.Add(work);
            }
        }

        return own;
    }

    /// <summary>As a file name.</summary>
    public override string ToString() => FormattableString.Invariant($"{Number}-of-{Count}");
}
