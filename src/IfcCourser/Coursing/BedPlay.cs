using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// How far the levelling beds of a group may be from the nominal bed when its lines are chosen: half of the way to their
/// limits, the rest is kept for the slab; three quarters or all of it, where that leaves fewer first courses cut over a
/// stepped slab.
/// </summary>
internal sealed class BedPlay(LayoutRules rules)
{
    private readonly FirstCourses _firstCourses = new(rules);
    private readonly LengthRange _bed = rules.Catalog.LevellingBed;

    /// <summary>The walls of a group with the limits of their beds; what stands on another wall has no levelling bed.</summary>
    public List<WallHeights> Limit(IReadOnlyCollection<WallHeights> walls)
    {
        List<WallHeights> Within(int quarters) =>
            [.. walls.Select(wall => wall.StandsOnWall ? wall : wall with { Bed = Limits(quarters) })];

        int? Cut(int quarters) => _firstCourses.FewestCut(_firstCourses.Feet(Within(quarters)));

        const int All = 4;
        var fewest = Cut(All);
        return Within(Enumerable.Range(All / 2, All / 2).FirstOrDefault(quarters => Cut(quarters) == fewest, All));
    }

    private LengthRange Limits(int quarters) => _bed with
    {
        Min = _bed.Nominal - ((_bed.Nominal - _bed.Min) * quarters / 4),
        Max = _bed.Nominal + ((_bed.Max - _bed.Nominal) * quarters / 4),
    };
}
