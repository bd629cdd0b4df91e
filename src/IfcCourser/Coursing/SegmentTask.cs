using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A stretch of a course to be filled with pieces and head joints from end to end; equal tasks have equal fillings.</summary>
/// <param name="Size">Its length.</param>
/// <param name="Start">What lies at its start.</param>
/// <param name="End">What lies at its end.</param>
/// <param name="Zones">What joints within it cost, positions counted from its start.</param>
internal sealed record SegmentTask(Length Size, SegmentEnd Start, SegmentEnd End, ImmutableArray<JointZone> Zones)
{
    public bool Equals(SegmentTask? other) =>
        other is not null && Size == other.Size && Start == other.Start && End == other.End
        && Zones.AsSpan().SequenceEqual(other.Zones.AsSpan());

    public override int GetHashCode()
    {
        var hash = default(HashCode);
        hash.Add(Size);
        hash.Add(Start);
        hash.Add(End);
        foreach (var zone in Zones)
        {
            hash.Add(zone.Centre.Nanometres);
        }

        return hash.ToHashCode();
    }
}
