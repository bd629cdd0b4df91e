using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Comparing;

/// <summary>A layout issued anew after an older one: its row among the revisions, and what changed in which wall.</summary>
public sealed class Reissue
{
    private readonly ImmutableDictionary<WallIdentity, WallRevision> _walls;

    private Reissue(Layout layout, ImmutableArray<WallLayout> gone, ImmutableDictionary<WallIdentity, WallRevision> walls) => (Layout, Gone, _walls) = (layout, gone, walls);

    /// <summary>With a row for this issue: the job file's own where it has one more than the older issue, else one that counts what changed.</summary>
    public Layout Layout { get; }

    /// <summary>Letter or number of this issue; empty where nothing changed and no issue is named.</summary>
    public string Mark => Layout.Job.Revisions is [.., var last] ? last.Mark : string.Empty;

    /// <summary>Walls that the older issue laid out and this one does not.</summary>
    public ImmutableArray<WallLayout> Gone { get; }

    /// <summary>Nothing changed, no row: the older issue stands.</summary>
    public static Reissue Of(Layout older, Layout newer)
    {
        var comparison = LayoutComparison.Of(older, newer);
        var (was, now) = (older.Job.Revisions, newer.Job.Revisions);
        var own = now.Length > was.Length ? now
            : comparison.IsSame ? was
            : was.Add(new Revision(
                Next(was.IsEmpty ? null : was[^1].Mark),
                newer.Model.Date[..Math.Min(newer.Model.Date.Length, "2026-03-12".Length)],
                Messages.ChangedSince(comparison.Changed.Length, comparison.Added.Length, comparison.Removed.Length),
                newer.Job.Author ?? string.Empty));
        var mark = own.IsEmpty ? string.Empty : own[^1].Mark;
        var added = newer.Walls.Where(wall => comparison.Added.Contains(wall.Identity)).Select(wall => (wall.Identity, new WallRevision(mark, ChangedAreas.All(wall), [])));
        var changed = comparison.Changed.Select(change => (change.New, new WallRevision(mark, change.Areas, change.Changes)));
        var laidOut = newer.Walls.Select(wall => wall.Identity).ToHashSet();
        var gone = comparison.Removed.Concat(comparison.Changed.Where(change => !laidOut.Contains(change.New)).Select(change => change.Old)).ToHashSet();
        return new Reissue(
            newer with { Job = newer.Job with { Revisions = own } },
            [.. older.Walls.Where(wall => gone.Contains(wall.Identity))],
            added.Concat(changed).DistinctBy(wall => wall.Item1).ToImmutableDictionary(wall => wall.Item1, wall => wall.Item2));
    }

    /// <summary>Null where the wall is as it was.</summary>
    public WallRevision? For(WallLayout wall) => _walls.GetValueOrDefault(wall.Identity);

    /// <summary>A, B ... without I and O, which read as numbers; after numbers the next number; after Z and words a further A.</summary>
    private static string Next(string? mark)
    {
        const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
        return mark is null ? "A"
            : int.TryParse(mark, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? (number + 1).ToString(CultureInfo.InvariantCulture)
            : Letters.IndexOf(mark[^1], StringComparison.Ordinal) is >= 0 and var i && i < Letters.Length - 1 ? mark[..^1] + Letters[i + 1]
            : mark + Letters[0];
    }
}
