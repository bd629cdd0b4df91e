using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>Explains why openings of a wall stay off its module lines.</summary>
internal sealed class RefusedMoves(Wall wall, ImmutableArray<OpeningLayout> openings, ModuleLines lines, LayoutRules rules)
{
    private readonly ModuleGrid _grid = new(lines, rules.Catalog.HeadJoint.Nominal);

    /// <summary>The least movement that would put both jambs of an opening on lines, never making it smaller.</summary>
    public RefusedMove BothJambs(OpeningLayout opening)
    {
        var design = opening.Design;
        var left = _grid.LeftJambToLine(design.Left);
        var width = (design.Width - _grid.Joint - rules.ModuleTolerance).CeilingTo(rules.Module) + _grid.Joint;
        return Explained(opening, rules.Openings == OpeningPolicy.Resize
            ? new JambShift(ToTheLeft(left), ToTheRight(_grid.RightJambToLine(design.Right)))
            : new[] { left, left > Length.Zero ? left - rules.Module : left + rules.Module }
                .Select(shift => new JambShift(shift, shift + width - design.Width))
                .MinBy(shift => Length.Abs(shift.Left) + Length.Abs(shift.Right)));
    }

    /// <summary>Why a move was refused, a clause.</summary>
    public static string Said(RefusedMove move, LayoutRules rules) => move.Why switch
    {
        Refusal.Kept => Messages.RefusedToKeep,
        Refusal.Widens => Messages.RefusedToWiden,
        Refusal.PastLargestShift => Messages.RefusedPastLargestShift(rules.MaxShift, rules.Catalog.Units),
        Refusal.PierShort => Messages.RefusedForPier(move.Pier, rules.Catalog.LeastPier, rules.Catalog.Units),
        _ => Messages.RefusedForOthers,
    };

    /// <summary>The least movement that would put one jamb on a line; null where one stands there.</summary>
    public RefusedMove? OneJamb(OpeningLayout opening)
    {
        var (placed, design) = (opening.Placed, opening.Design);
        if (Length.Min(Length.Abs(_grid.LeftJambToLine(placed.Left)), Length.Abs(_grid.RightJambToLine(placed.Right))) <= rules.ModuleTolerance)
        {
            return null;
        }

        var (left, right) = (_grid.LeftJambToLine(design.Left), _grid.RightJambToLine(design.Right));
        var shifts = rules.Openings == OpeningPolicy.Resize
            ? new[] { new JambShift(ToTheLeft(left), Length.Zero), new JambShift(Length.Zero, ToTheRight(right)) }
            : [new JambShift(left, left), new JambShift(right, right)];
        return Explained(opening, shifts.MinBy(shift => Length.Abs(shift.Left) + Length.Abs(shift.Right)));
    }

    private Length ToTheLeft(Length toNearest) => toNearest > Length.Zero ? toNearest - rules.Module : toNearest;

    private Length ToTheRight(Length toNearest) => toNearest < Length.Zero ? toNearest + rules.Module : toNearest;

    private RefusedMove Explained(OpeningLayout opening, JambShift shift)
    {
        if (rules.Openings == OpeningPolicy.Keep)
        {
            return new RefusedMove(shift, Refusal.Kept);
        }

        if (rules.Openings == OpeningPolicy.Move && Length.Abs(shift.Right - shift.Left) > rules.ModuleTolerance)
        {
            return new RefusedMove(shift, Refusal.Widens);
        }

        if (Length.Max(Length.Abs(shift.Left), Length.Abs(shift.Right)) > rules.MaxShift)
        {
            return new RefusedMove(shift, Refusal.PastLargestShift);
        }

        var crowded = Piers(opening, shift.Of(opening.Design)).Where(pier => !OpeningMoves.PierHolds(pier.Left, pier.Designed, rules.Catalog.LeastPier))
            .Select(pier => (Length?)pier.Left).Min();
        return crowded is { } pier ? new RefusedMove(shift, Refusal.PierShort, pier) : new RefusedMove(shift, Refusal.Others);
    }

    /// <summary>What a move would leave of the piers beside an opening, the others as placed, and what they were designed as.</summary>
    private IEnumerable<(Length Left, Length Designed)> Piers(OpeningLayout opening, ElevationRect moved)
    {
        yield return (moved.Left, opening.Design.Left);
        yield return (wall.Frame.Length - moved.Right, wall.Frame.Length - opening.Design.Right);
        foreach (var other in openings.Where(other => other.Interrupts && other != opening && other.Design.StandsBeside(opening.Design)))
        {
            yield return (Gap(other.Placed, moved), Gap(other.Design, opening.Design));
        }
    }

    private static Length Gap(ElevationRect a, ElevationRect b) => Length.Max(b.Left - a.Right, a.Left - b.Right);
}
