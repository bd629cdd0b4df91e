using System.Collections.Concurrent;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>The tables of what a segment's rest costs, made once for all walls of a run, which have one catalog. For use by several threads at once.</summary>
internal sealed class RestTables
{
    private readonly ConcurrentDictionary<Key, RestCosts> _costs = new();

    /// <summary>The table of segments that end alike, under such rules.</summary>
    public RestCosts Of(LayoutRules rules, CellSizes sizes, SegmentEnd end, SegmentGrid grid)
    {
        var ending = grid with { Target = 0, Slide = Length.Zero };
        return _costs.GetOrAdd(
            new Key(rules.Set.Aims, rules.MinPiece, rules.PreferredPiece, end, ending),
            static (_, given) => new RestCosts(given.sizes, given.Aims, given.end, given.ending),
            (sizes, rules.Set.Aims, end, ending));
    }

    private readonly record struct Key(BondAims Aims, Length MinPiece, Length PreferredPiece, SegmentEnd End, SegmentGrid Grid);
}
