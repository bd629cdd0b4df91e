using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>What head joints of neighbouring courses cost by how they lap, and those two courses apart by whether they repeat.</summary>
internal sealed class RowLaps
{
    private readonly Length _least;
    private readonly Length _preferred;
    private readonly long _underPreferred;
    private readonly long _notRepeated;
    private readonly Length _cell;

    public RowLaps(Length thickness, LayoutRules rules)
    {
        var lap = rules.PreferredLap(thickness);
        _least = rules.MinOverlap;
        _preferred = Length.Min(lap, rules.Catalog.Pitch - lap);
        _underPreferred = rules.Set.Aims.LapUnderPreferred;
        _notRepeated = rules.Set.Aims.NotRepeated;
        _cell = rules.Catalog.CutGrid;
    }

    /// <summary>Joints further apart than this don't concern each other.</summary>
    public Length Reach => Length.Max(_least, _preferred);

    /// <summary>What a joint asks of those above and below it.</summary>
    public IEnumerable<JointZone> Zones(Length joint) => [LeastZone(joint), PreferredZone(joint)];

    /// <summary>Where joints would lap one too short.</summary>
    public JointZone LeastZone(Length joint) => new(joint, _least, BondAims.Breach);

    /// <summary>Where joints would lap one less than preferred.</summary>
    public JointZone PreferredZone(Length joint) => new(joint, _preferred, _underPreferred);

    /// <summary>The cost of two rows above each other: for each pair of joints that lap too short, and that lap less than preferred.</summary>
    /// <param name="lower">Centres, rising.</param>
    /// <param name="upper">Centres, rising.</param>
    public long Of(Length[] lower, Length[] upper)
    {
        var (cost, first) = (0L, 0);
        var reach = Reach.Nanometres - PieceCosts.DustNanometres;
        foreach (var joint in upper)
        {
            while (first < lower.Length && joint.Nanometres - lower[first].Nanometres >= reach)
            {
                first++;
            }

            for (var i = first; i < lower.Length && lower[i].Nanometres - joint.Nanometres < reach; i++)
            {
                cost += Of(lower[i], joint);
            }
        }

        return cost;
    }

    /// <summary>The cost of two joints above each other.</summary>
    public long Of(Length lower, Length upper)
    {
        var lap = Math.Abs(lower.Nanometres - upper.Nanometres) + PieceCosts.DustNanometres;
        return (lap < _least.Nanometres ? BondAims.Breach : 0) + (lap < _preferred.Nanometres ? _underPreferred : 0);
    }

    /// <summary>What it is worth that joints stand over those two courses below, as a cost.</summary>
    /// <param name="lower">Centres, rising.</param>
    /// <param name="upper">Centres, rising.</param>
    public long Repeating(Length[] lower, Length[] upper)
    {
        var (count, first) = (0, 0);
        foreach (var joint in upper)
        {
            while (first < lower.Length && joint - lower[first] >= _cell)
            {
                first++;
            }

            for (var i = first; i < lower.Length && lower[i] - joint < _cell; i++)
            {
                count++;
            }
        }

        return -count * _notRepeated;
    }

    /// <summary>What a joint is worth to those two courses above and below it.</summary>
    public JointZone RepeatZone(Length joint) => new(joint, _cell, -_notRepeated);
}
