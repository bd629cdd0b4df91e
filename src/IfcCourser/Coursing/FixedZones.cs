using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>What joints of a course cost by their place, whatever pieces lie beside them: near bars, over fixed joints, under bearings.</summary>
internal sealed class FixedZones(
    ImmutableArray<ShapedCourse> shapes, ImmutableArray<Lintel> lintels, ImmutableArray<Bar> bars, RowLaps laps, LayoutRules rules)
{
    /// <summary>The zones of a course, along the wall.</summary>
    public ImmutableArray<JointZone> Of(int course) =>
    [
        .. new[] { course - 1, course + 1 }
            .Where(other => other >= 0 && other < shapes.Length)
            .SelectMany(other => shapes[other].EdgeJoints.Concat(shapes[other].JambJoints))
            .SelectMany(laps.Zones),
        .. bars
            .Where(bar => bar.Passes(shapes[course].Band))
            .Select(bar => new JointZone(bar.At, rules.CoreClearance, BondAims.Breach)),
        .. BearingZones(shapes[course].Band),
    ];

    /// <summary>Under a lintel's bearing lies a full unit, or a piece of the bearing's length and the least piece.</summary>
    private IEnumerable<JointZone> BearingZones(CourseBand band)
    {
        foreach (var lintel in lintels.Where(lintel => lintel.Bottom - band.Top == rules.Catalog.BedJoint.Nominal))
        {
            foreach (var (bearing, jamb, inward) in new[]
            {
                (lintel.BearingLeft, lintel.From + lintel.BearingLeft, -1),
                (lintel.BearingRight, lintel.To - lintel.BearingRight, 1),
            })
            {
                var reach = Length.Min(bearing + rules.MinPiece, rules.Catalog.UnitLength) / 2;
                yield return new JointZone(jamb + (reach * inward), reach, rules.Set.Aims.Bearing);
            }
        }
    }
}
