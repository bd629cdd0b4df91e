using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Joints of the pieces that lie in the courses about a segment, and what they cost a row that is laid there.</summary>
/// <param name="Laps">What laps cost.</param>
/// <param name="Near">Centres of joints in the courses below and above, each rising.</param>
/// <param name="Repeated">Centres of joints two courses below and above, each rising.</param>
internal sealed record JointsBeside(RowLaps Laps, ImmutableArray<Length[]> Near, ImmutableArray<Length[]> Repeated)
{
    /// <summary>What a row with such joints costs here beyond what it costs alone.</summary>
    public long CostOf(Length[] joints)
    {
        var cost = RepeatsOf(joints);
        foreach (var near in Near)
        {
            cost += Laps.Of(near, joints);
        }

        return cost;
    }

    /// <summary>What joints over those two courses away are worth, as a cost: never more than nothing.</summary>
    public long RepeatsOf(Length[] joints)
    {
        var cost = 0L;
        foreach (var repeated in Repeated)
        {
            cost += Laps.Repeating(repeated, joints);
        }

        return cost;
    }

    public IEnumerable<JointZone> Zones() => Near.SelectMany(joints => joints).SelectMany(Laps.Zones)
        .Concat(Repeated.SelectMany(joints => joints).Select(Laps.RepeatZone));
}
