using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Joints of the pieces that lie in the courses about a segment, and what they cost a row that is laid there.</summary>
/// <param name="Laps">What laps cost.</param>
/// <param name="Near">Centres of joints in the courses below and above, each rising.</param>
/// <param name="Repeated">Centres of joints two courses below and above, each rising.</param>
internal sealed record JointsBeside(RowLaps Laps, ImmutableArray<Length[]> Near, ImmutableArray<Length[]> Repeated)
{
    /// <summary>How many joints there are.</summary>
    public int Count => Near.Sum(joints => joints.Length) + Repeated.Sum(joints => joints.Length);

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

    /// <summary>No row's joints are worth more by standing over those two courses away.</summary>
    public long LeastOfRepeats => Repeated.Sum(joints => joints.Length * Laps.RepeatZone(default).Cost);

    /// <summary>Adds the zones that a segment's joints meet, positions counted from its start.</summary>
    public void AddZones(ImmutableArray<JointZone>.Builder zones, Length left, Length size)
    {
        foreach (var joints in Near)
        {
            foreach (var joint in joints)
            {
                AddWithin(zones, Laps.LeastZone(joint - left), size);
                AddWithin(zones, Laps.PreferredZone(joint - left), size);
            }
        }

        foreach (var joints in Repeated)
        {
            foreach (var joint in joints)
            {
                AddWithin(zones, Laps.RepeatZone(joint - left), size);
            }
        }
    }

    private static void AddWithin(ImmutableArray<JointZone>.Builder zones, JointZone zone, Length size)
    {
        if (zone.MeetsJointsOf(size))
        {
            zones.Add(zone);
        }
    }
}
