using System.Collections.Immutable;

namespace IfcCourser.Comparing;

/// <summary>
/// Which wall of the older layout is which of the newer: by GlobalId where that is unique on both sides, then by the place of its
/// body, for some programs give new ids with each export.
/// </summary>
internal sealed record WallPairs(
    ImmutableArray<(ComparedWall Old, ComparedWall New)> Pairs, ImmutableArray<ComparedWall> Removed, ImmutableArray<ComparedWall> Added)
{
    public static WallPairs Of(ImmutableArray<ComparedWall> older, ImmutableArray<ComparedWall> newer)
    {
        var (oldById, newById) = (Unique(older), Unique(newer));
        var byId = older.Where(wall => oldById.ContainsKey(wall.Identity.GlobalId) && newById.ContainsKey(wall.Identity.GlobalId))
            .ToDictionary(wall => wall, wall => newById[wall.Identity.GlobalId]);
        var free = newer.Except(byId.Values).ToList();
        var pairs = new List<(ComparedWall, ComparedWall)>();
        var removed = new List<ComparedWall>();
        foreach (var wall in older)
        {
            var partner = byId.GetValueOrDefault(wall) ?? free.Find(wall.StandsWhere);
            if (partner is null)
            {
                removed.Add(wall);
            }
            else
            {
                free.Remove(partner);
                pairs.Add((wall, partner));
            }
        }

        return new WallPairs([.. pairs], [.. removed], [.. free]);
    }

    private static Dictionary<string, ComparedWall> Unique(ImmutableArray<ComparedWall> walls) => walls
        .GroupBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal)
        .Where(same => same.Count() == 1)
        .ToDictionary(same => same.Key, same => same.Single(), StringComparer.Ordinal);
}
