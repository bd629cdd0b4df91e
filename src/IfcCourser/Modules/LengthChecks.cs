using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>
/// Wall lengths on the module: masonry starts on a line and ends a joint before one, so that a free run measures n p - j; against the face of
/// another wall a joint more is needed, at each end that stands against one.
/// </summary>
internal static class LengthChecks
{
    /// <param name="wall">The wall.</param>
    /// <param name="rules">Module, head joint and its limits, unit.</param>
    /// <returns>Null where the length is not the wall's own.</returns>
    public static LengthCheck? Of(Wall wall, LayoutRules rules)
    {
        EndKind[] ends = [wall.Start.Kind, wall.End.Kind];
        if (wall.Frame.Curve is not null || ends.Any(end => end is EndKind.Continued or EndKind.MovementJoint) || wall.Start.Slant != Length.Zero || wall.End.Slant != Length.Zero)
        {
            return null;
        }

        var joint = rules.Catalog.HeadJoint;
        var offset = joint.Nominal * (ends.Count(end => end is EndKind.Tee or EndKind.Cross) - 1);
        var length = wall.Frame.Length;
        var (under, over) = ((length - offset).FloorTo(rules.Module) + offset, (length - offset).CeilingTo(rules.Module) + offset);
        var check = new LengthCheck(length, Length.Max(under, Length.Zero), over, IsTaken: false);
        var joints = Math.Max(0, (length / rules.Catalog.Pitch) - 1);
        return check with { IsTaken = check.Way < Length.Zero ? (joint.Max - joint.Nominal) * joints >= -check.Way : (joint.Nominal - joint.Min) * joints >= check.Way };
    }
}
