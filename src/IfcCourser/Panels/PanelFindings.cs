using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Panels;

/// <summary>What is to be told of a wall's movement joints.</summary>
internal static class PanelFindings
{
    public static Finding NoRule(string rules, Length at) => new(
        FindingCodes.MovementJointNotPlaced, Messages.NoMovementJointRule(rules), new FindingPlace { S = at });

    public static Finding Added(ImmutableArray<MovementJoint> joints, LayoutRules rules) => new(
        FindingCodes.MovementJointAdded,
        Messages.MovementJointsAdded([.. joints.Select(joint => joint.At)], joints[0].Width, rules.Catalog.Units),
        new FindingPlace { S = joints[0].At });

    /// <param name="asked">The place refused.</param>
    /// <param name="possible">Where joints can stand, from left to right.</param>
    /// <param name="rules">Units of the message.</param>
    public static Finding NoRoom(JointPlace asked, ImmutableArray<Interval> possible, LayoutRules rules)
    {
        var before = possible.Where(range => range.To < asked.At).Select(range => (Length?)range.To).LastOrDefault();
        var behind = possible.Where(range => range.From > asked.At).Select(range => (Length?)range.From).FirstOrDefault();
        return new Finding(
            FindingCodes.MovementJointNotPlaced,
            Messages.NoRoomForMovementJoint(asked.At, [.. new[] { before, behind }.OfType<Length>()], rules.Catalog.Units),
            new FindingPlace { S = asked.At });
    }

    public static Finding NearAnother(JointPlace asked, Length other, LayoutRules rules) => new(
        FindingCodes.MovementJointNotPlaced,
        Messages.MovementJointNearAnother(asked.At, other, rules.Catalog.Units),
        new FindingPlace { S = asked.At });

    public static IEnumerable<Finding> TooLong(PanelTask task, ImmutableArray<Length> joints, PanelScore score, LayoutRules rules)
    {
        var ends = joints.Prepend(task.Run.From).Append(task.Run.To).ToList();
        foreach (var (from, to) in ends.Zip(ends.Skip(1)).Where(_ => score.Missed > 0 || score.Excess > Length.Zero))
        {
            if (task.Of(from, to) is { Excess: var excess } && excess > Length.Zero)
            {
                yield return new Finding(
                    FindingCodes.MovementJointMissing,
                    Messages.PanelTooLong(from, to, to - from - excess, rules.Catalog.Units),
                    new FindingPlace { S = from + ((to - from) / 2) });
            }

            foreach (var wanted in task.Wanted.Where(wanted => wanted.From > from && wanted.To < to))
            {
                yield return new Finding(
                    FindingCodes.MovementJointMissing,
                    Messages.NoMovementJointBesideOpening(wanted.From, wanted.To, rules.Catalog.Units),
                    new FindingPlace { S = wanted.From });
            }
        }
    }
}
