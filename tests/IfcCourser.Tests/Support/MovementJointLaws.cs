using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Support;

/// <summary>What holds of every wall's movement joints, checked on the result alone.</summary>
internal static class MovementJointLaws
{
    public static IEnumerable<string> Breaches(WallLayout wall, LayoutRules rules) => wall.MovementJoints.IsEmpty
        ? PanelsAreShort(wall, rules)
        : PanelsAreShort(wall, rules).Concat(NothingCrosses(wall)).Concat(EdgesTellTheTruth(wall)).Concat(OpeningsAreClear(wall, rules)).Concat(BarsStandBeside(wall, rules));

    /// <summary>No panel is longer than the rule's longest, unless a finding says so or an opening parts the wall over its height.</summary>
    private static IEnumerable<string> PanelsAreShort(WallLayout wall, LayoutRules rules)
    {
        var rule = rules.Set.MovementJoints;
        var outline = new ElevationOutline(wall.Outline);
        if (rule is null || (rule.Walls == JointedWalls.NonBearing && wall.Wall.LoadBearing != false)
            || wall.Findings.Any(finding => finding.Code == FindingCodes.MovementJointMissing)
            || wall.Openings.Any(opening => opening.Interrupts && opening.Placed.Bottom <= Length.Zero
                && opening.Placed.Top >= outline.HighestWithin(opening.Placed.Left, opening.Placed.Right) - rules.Set.MortarRest))
        {
            return [];
        }

        var ends = wall.MovementJoints.Select(joint => joint.At).Prepend(Length.Zero).Append(wall.Frame.Length).ToList();
        return ends.Zip(ends.Skip(1)).Where(panel => panel.Second - panel.First > rule.LongestPanel)
            .Select(panel => $"the panel from {panel.First} to {panel.Second} is too long");
    }

    private static IEnumerable<string> NothingCrosses(WallLayout wall)
    {
        foreach (var joint in wall.MovementJoints)
        {
            var rect = joint.Rect;
            var things = wall.Courses.SelectMany(course => course.Pieces.Select(piece => (piece.Id, Rect: new ElevationRect(piece.From, piece.To, piece.Bottom, piece.Top))))
                .Concat(wall.Lintels.Select(lintel => (lintel.Id, Rect: new ElevationRect(lintel.From, lintel.To, lintel.Bottom, lintel.Top))))
                .Concat(wall.Cores.Select(core => (core.Id, Rect: new ElevationRect(core.At - (core.Diameter / 2), core.At + (core.Diameter / 2), core.Bottom, core.Top))))
                .Concat(wall.Openings.Where(opening => opening.Interrupts).Select(opening => (Id: opening.Opening.GlobalId, Rect: opening.Placed)));
            foreach (var (id, _) in things.Where(thing => thing.Rect.Left < rect.Right && thing.Rect.Right > rect.Left && thing.Rect.StandsBeside(rect)))
            {
                yield return $"{id} crosses the movement joint at {joint.At}";
            }
        }
    }

    /// <summary>Every course beside a joint ends at its faces, and says so; nothing else says so.</summary>
    private static IEnumerable<string> EdgesTellTheTruth(WallLayout wall)
    {
        foreach (var course in wall.Courses)
        {
            foreach (var span in course.Spans)
            {
                bool IsAt(Length face, Func<ElevationRect, Length> side) => wall.MovementJoints.Any(joint =>
                    side(joint.Rect) == face && joint.Bottom < course.Top && joint.Top > course.Bottom);
                if ((span.StartEdge == EdgeKind.Movement) != IsAt(span.Run.From, rect => rect.Right)
                    || (span.EndEdge == EdgeKind.Movement) != IsAt(span.Run.To, rect => rect.Left))
                {
                    yield return $"course {course.Number}: the span from {span.Run.From} does not tell which movement joints it ends at";
                }
            }
        }
    }

    private static IEnumerable<string> OpeningsAreClear(WallLayout wall, LayoutRules rules)
    {
        var least = rules.Set.MovementJoints!.FromJamb;
        return wall.MovementJoints.Where(joint => joint.Why is "panel" or "opening").SelectMany(joint => wall.Openings
            .Where(opening => opening.Interrupts && opening.Placed.Left - joint.Rect.Right < least && joint.Rect.Left - opening.Placed.Right < least)
            .Select(opening => $"the movement joint at {joint.At} stands too near to {opening.Opening.GlobalId}"));
    }

    /// <summary>Where a wall has bars, one stands at each side of a joint within the rule's distance, or a finding says that there is no room.</summary>
    private static IEnumerable<string> BarsStandBeside(WallLayout wall, LayoutRules rules)
    {
        if (rules.Set.Bars is not { FromMovementJoint.Largest: var largest } || wall.Findings.Any(finding => finding.Code == FindingCodes.CoreNotPossible))
        {
            yield break;
        }

        foreach (var joint in wall.MovementJoints.Where(joint => joint.Why != "thickness"))
        {
            if (!wall.Cores.Any(core => core.At < joint.Rect.Left && core.At >= joint.Rect.Left - largest)
                || !wall.Cores.Any(core => core.At > joint.Rect.Right && core.At <= joint.Rect.Right + largest))
            {
                yield return $"the movement joint at {joint.At} has no bar at one side";
            }
        }
    }
}
