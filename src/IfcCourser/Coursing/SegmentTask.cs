using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A stretch of a course to be filled with pieces and head joints from end to end; equal tasks have equal fillings.</summary>
/// <param name="Size">Its length.</param>
/// <param name="StartCost">Cost of a first piece that is cut.</param>
/// <param name="EndCost">Cost of a last piece that is cut.</param>
/// <param name="Zones">What joints within it cost, positions counted from its start.</param>
internal sealed record SegmentTask(Length Size, long StartCost, long EndCost, ImmutableArray<JointZone> Zones)
{
    public bool Equals(SegmentTask? other) =>
        other is not null && Size == other.Size && StartCost == other.StartCost && EndCost == other.EndCost
        && Zones.AsSpan().SequenceEqual(other.Zones.AsSpan());

    public override int GetHashCode()
    {
        var hash = default(HashCode);
        hash.Add(Size);
        hash.Add(StartCost);
        hash.Add(EndCost);
        foreach (var zone in Zones)
        {
            hash.Add(zone);
        }

        return hash.ToHashCode();
    }
}
