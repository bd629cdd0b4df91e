using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>Where the module lines of a wall may start.</summary>
internal static class ModuleDatums
{
    /// <summary>Directions are told from their opposites by the sign of x, or of y where x is no more than this.</summary>
    private const double Dust = 1e-9;

    /// <summary>The start that a rule asks for; null where the openings decide.</summary>
    /// <param name="wall">The wall, along whose run starts are counted.</param>
    /// <param name="rules">Datum, module, head joint.</param>
    public static Length? Fixed(Wall wall, LayoutRules rules) => rules.Set.Datum switch
    {
        Datum.Start => AtStart(wall, rules),
        Datum.End => AtEnd(wall, rules),
        Datum.Grid => OnGrid(wall.Frame, rules),
        _ => null,
    };

    /// <summary>Masonry that starts free starts on a line; a joint lies between it and another wall's face.</summary>
    public static Length AtStart(Wall wall, LayoutRules rules) => IsAgainstWall(wall.Start) ? rules.Catalog.HeadJoint.Nominal : Length.Zero;

    public static Length AtEnd(Wall wall, LayoutRules rules) =>
        (wall.Frame.Length + (IsAgainstWall(wall.End) ? Length.Zero : rules.Catalog.HeadJoint.Nominal)).Modulo(rules.Module);

    /// <summary>
    /// All starts among which a best one is: with fewer jambs off lines, then less movement, there is none. Between two of
    /// them the same jambs stand on lines and the movement changes evenly, so that it is least at one of the two. They are
    /// where an opening need not move, moves as far as it may, keeps a neighbour's pier at its least, or stands at the edge
    /// of the tolerance.
    /// </summary>
    /// <param name="openings">The openings, numbered by stacks.</param>
    /// <param name="rules">Module, head joint, largest shift, least pier.</param>
    public static IEnumerable<Length> Critical(ImmutableArray<MovableOpening> openings, LayoutRules rules)
    {
        foreach (var stack in openings.Where(opening => !opening.IsFixed).GroupBy(opening => opening.Stack))
        {
            var shifts = stack.SelectMany(opening => Crowding(opening, openings, rules))
                .Append(Length.Zero).Append(rules.MaxShift).Append(-rules.MaxShift)
                .Where(shift => Length.Abs(shift) <= rules.MaxShift)
                .Append(rules.ModuleTolerance).Append(-rules.ModuleTolerance)
                .Distinct().ToList();
            foreach (var design in stack.Select(opening => opening.Design))
            {
                foreach (var shift in shifts)
                {
                    yield return (design.Left + rules.Catalog.HeadJoint.Nominal + shift).Modulo(rules.Module);
                    yield return (design.Right + shift).Modulo(rules.Module);
                }
            }
        }
    }

    /// <summary>Shifts at which an opening leaves the least pier, or none, to a neighbour that does not move.</summary>
    private static IEnumerable<Length> Crowding(MovableOpening opening, ImmutableArray<MovableOpening> openings, LayoutRules rules)
    {
        var edges = openings
            .Where(other => other.Wall == opening.Wall && other.Stack != opening.Stack && other.Design.StandsBeside(opening.Design))
            .SelectMany(other => new[] { other.Design.Left, other.Design.Right })
            .Append(opening.Run.From).Append(opening.Run.To);
        foreach (var edge in edges)
        {
            foreach (var pier in new[] { rules.Catalog.LeastPier, Length.Zero })
            {
                yield return edge + pier - opening.Design.Left;
                yield return edge - pier - opening.Design.Right;
            }
        }
    }

    private static Length OnGrid(WallFrame frame, LayoutRules rules)
    {
        var origin = new Vector2(rules.Set.GridOrigin.X.Mm, rules.Set.GridOrigin.Y.Mm);
        var place = Length.FromModelMm(Vector2.Dot(origin - frame.Origin.Plan, frame.Direction));
        var isForward = frame.Direction.X > Dust || (frame.Direction.X >= -Dust && frame.Direction.Y > 0);
        return (isForward ? place : place + rules.Catalog.HeadJoint.Nominal).Modulo(rules.Module);
    }

    private static bool IsAgainstWall(WallEnd end) => end.Kind is EndKind.Tee or EndKind.Cross;
}
