using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>What joints of a course cost by their place, whatever pieces lie beside them: near bars, over fixed joints, by lintels.</summary>
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
        .. LintelZones.Of(lintels, shapes[course].Band, rules),
    ];
}
