using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Comparing;

/// <summary>What changed from one layout to another, wall by wall; instance numbers, order and ids of a new export count for nothing.</summary>
/// <param name="Added">Walls of the newer layout only.</param>
/// <param name="Removed">Walls of the older layout only.</param>
/// <param name="Changed">In the older layout's order.</param>
/// <param name="Superseded">Sheets of the older issue.</param>
/// <param name="OldTotals">Of the older layout.</param>
/// <param name="NewTotals">Of the newer layout.</param>
public sealed record LayoutComparison(
    ImmutableArray<WallIdentity> Added,
    ImmutableArray<WallIdentity> Removed,
    ImmutableArray<WallChange> Changed,
    ImmutableArray<SupersededSheet> Superseded,
    LayoutTotals OldTotals,
    LayoutTotals NewTotals)
{
    public bool IsSame => Added.IsEmpty && Removed.IsEmpty && Changed.IsEmpty && Superseded.IsEmpty;

    public static LayoutComparison Of(Layout older, Layout newer)
    {
        var walls = ComparedWall.Of(older);
        var (pairs, removed, added) = WallPairs.Of(walls, ComparedWall.Of(newer));
        ImmutableArray<WallChange> changed =
        [
            .. pairs.Select(pair => new WallChange(pair.Old.Identity, pair.New.Identity, [.. new WallDifferences(pair.Old, pair.New, newer.Rules.Catalog.Units).All()], PieceCounts.Of(pair.New.Layout) - PieceCounts.Of(pair.Old.Layout)))
                .Where(change => !change.Changes.IsEmpty),
        ];
        var gone = removed.Select(wall => wall.Identity).Concat(changed.Select(change => change.Old)).ToHashSet();
        return new LayoutComparison(
            [.. added.Select(wall => wall.Identity)],
            [.. removed.Select(wall => wall.Identity)],
            changed,
            [
                .. SetOutSheets(older, newer),
                .. walls.Select((wall, i) => (Wall: wall, Number: i + 1))
                    .Where(sheet => sheet.Wall.Layout is not null && gone.Contains(sheet.Wall.Identity))
                    .Select(sheet => new SupersededSheet(FormattableString.Invariant($"W{sheet.Number:000}"), sheet.Wall.Identity.Name, sheet.Wall.Identity.GlobalId)),
            ],
            LayoutTotals.Of(older),
            LayoutTotals.Of(newer));
    }

    /// <summary>Those of storeys whose bars to cast in are no longer where they were.</summary>
    private static IEnumerable<SupersededSheet> SetOutSheets(Layout older, Layout newer)
    {
        var now = newer.SetOut.Storeys.ToLookup(storey => storey.Storey, StringComparer.Ordinal);
        return older.SetOut.Storeys.Where(storey => storey.Bars.Any(bar => bar.IsCastIn))
            .Select((storey, i) => (Storey: storey, Number: i + 1))
            .Where(sheet => !HasBarsOf(sheet.Storey, now[sheet.Storey.Storey].FirstOrDefault()))
            .Select(sheet => new SupersededSheet(FormattableString.Invariant($"S{sheet.Number:00}"), sheet.Storey.Storey, null));
    }

    private static bool HasBarsOf(StoreySetOut older, StoreySetOut? newer)
    {
        var left = newer?.Bars.Where(bar => bar.IsCastIn).ToList() ?? [];
        return older.Bars.Where(bar => bar.IsCastIn).All(bar => left.FindIndex(other => Nearness.Is(bar.Point, other.Point)) is >= 0 and var i && RemoveAt(left, i))
            && left.Count == 0;
    }

    private static bool RemoveAt<T>(List<T> list, int index)
    {
        list.RemoveAt(index);
        return true;
    }
}
