using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Comparing;

/// <summary>What changed from one layout to another, wall by wall; instance numbers, order and ids of a new export count for nothing.</summary>
/// <param name="Added">Walls of the newer layout only.</param>
/// <param name="Removed">Walls of the older layout only.</param>
/// <param name="Changed">In the older layout's order.</param>
/// <param name="SetOuts">Storeys of the older layout whose bars to cast in are no longer where they were; null for walls without a storey.</param>
/// <param name="OldTotals">Of the older layout.</param>
/// <param name="NewTotals">Of the newer layout.</param>
public sealed record LayoutComparison(
    ImmutableArray<WallIdentity> Added,
    ImmutableArray<WallIdentity> Removed,
    ImmutableArray<WallChange> Changed,
    ImmutableArray<string?> SetOuts,
    LayoutTotals OldTotals,
    LayoutTotals NewTotals)
{
    public bool IsSame => Added.IsEmpty && Removed.IsEmpty && Changed.IsEmpty && SetOuts.IsEmpty;

    public static LayoutComparison Of(Layout older, Layout newer)
    {
        var walls = ComparedWall.Of(older);
        var (pairs, removed, added) = WallPairs.Of(walls, ComparedWall.Of(newer));
        ImmutableArray<WallChange> changed =
        [
            .. pairs.Select(pair => new WallChange(
                    pair.Old.Identity,
                    pair.New.Identity,
                    [.. new WallDifferences(pair.Old, pair.New, newer.Rules.Catalog.Units).All()],
                    AreasOf(pair.Old.Layout, pair.New.Layout),
                    PieceCounts.Of(pair.New.Layout) - PieceCounts.Of(pair.Old.Layout)))
                .Where(change => !change.Changes.IsEmpty),
        ];
        return new LayoutComparison(
            [.. added.Select(wall => wall.Identity)],
            [.. removed.Select(wall => wall.Identity)],
            changed,
            [.. StoreysOfMovedBars(older, newer)],
            LayoutTotals.Of(older),
            LayoutTotals.Of(newer));
    }

    private static ImmutableArray<ElevationRect> AreasOf(WallLayout? was, WallLayout? now) =>
        now is null ? [] : was is null ? ChangedAreas.All(now) : ChangedAreas.Of(was, now);

    private static IEnumerable<string?> StoreysOfMovedBars(Layout older, Layout newer)
    {
        var now = newer.SetOut.Storeys.ToLookup(storey => storey.Storey, StringComparer.Ordinal);
        return older.SetOut.Storeys.Where(storey => storey.Bars.Any(bar => bar.IsCastIn))
            .Where(storey => !HasBarsOf(storey, now[storey.Storey].FirstOrDefault()))
            .Select(storey => storey.Storey);
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
