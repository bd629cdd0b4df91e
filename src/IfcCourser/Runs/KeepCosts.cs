using System.Collections.Immutable;
using System.Numerics;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>
/// What it costs to keep openings as wanted: walls are coursed with them kept, and with them cured, where the layout does not hold the one or the
/// other already; what is cut or breaks a rule is counted in both. Only walls that this can change are coursed again.
/// </summary>
public static class KeepCosts
{
    /// <summary>The layout with the cost at each opening that stands elsewhere once cured.</summary>
    /// <param name="layout">A layout of the model, with openings kept, moved or resized.</param>
    /// <param name="model">The model it was made from.</param>
    public static Layout With(Layout layout, WallModel model)
    {
        var moving = layout.Rules.Openings == OpeningPolicy.Keep ? OpeningPolicy.Move : layout.Rules.Openings;
        var kept = Again(layout, model, OpeningPolicy.Keep, wall => wall.Openings.Any(opening => opening.Placed != opening.Design));
        var cured = Again(
            layout, Cured(layout, model), moving,
            wall => wall.Openings.Any(opening => MayBeCured(opening) || (layout.Rules.Openings == OpeningPolicy.Keep && opening.Interrupts && !opening.Opening.IsFixed)));
        return layout with
        {
            Walls = [.. layout.Walls.Select(wall => With(wall, kept.GetValueOrDefault(wall.Identity.StepId, wall), cured.GetValueOrDefault(wall.Identity.StepId, wall)))],
        };
    }

    /// <summary>Some walls of a layout coursed again, by their instance numbers.</summary>
    private static Dictionary<long, WallLayout> Again(Layout layout, WallModel model, OpeningPolicy policy, Func<WallLayout, bool> asked)
    {
        var walls = layout.Walls.Where(asked).Select(wall => wall.Identity.StepId).ToHashSet();
        return walls.Count == 0 ? [] : LayoutBuilder.Build(
            model with { Walls = [.. model.Walls.Select(wall => wall with { IsSelected = walls.Contains(wall.Identity.StepId) })] },
            layout.Rules with { Openings = policy }, layout.Model, standing: layout.Walls).Walls.ToDictionary(wall => wall.Identity.StepId);
    }

    /// <summary>The model with openings where the designer would have to draw them.</summary>
    private static WallModel Cured(Layout layout, WallModel model)
    {
        var laid = layout.Walls.ToDictionary(wall => wall.Identity.StepId);
        return model with
        {
            Walls =
            [
                .. model.Walls.Select(wall => laid.TryGetValue(wall.Identity.StepId, out var coursed) && coursed.Openings.Any(MayBeCured)
                    ? wall with { Openings = [.. wall.Openings.Zip(coursed.Openings, (opening, laidOut) => CanBeCured(laidOut, coursed) ? Redrawn(opening, laidOut.Check!) : opening)] }
                    : wall),
            ],
        };
    }

    private static bool MayBeCured(OpeningLayout opening) => opening.Check?.State is ModuleState.WidthOff or ModuleState.Stuck;

    /// <summary>Whether the cure leaves the opening inside the wall and apart from the others.</summary>
    private static bool CanBeCured(OpeningLayout opening, WallLayout wall)
    {
        if (!MayBeCured(opening))
        {
            return false;
        }

        var (left, right) = (opening.Design.Left + opening.Check!.MoveLeft, opening.Design.Right + opening.Check.MoveRight);
        return left > Length.Zero && right < wall.Frame.Length && !wall.Openings.Any(other => other.Interrupts && other.Opening != opening.Opening
            && other.Design.StandsBeside(opening.Design) && Length.Min(other.Design.Left, other.Placed.Left) < right && Length.Max(other.Design.Right, other.Placed.Right) > left);
    }

    private static WallOpening Redrawn(WallOpening opening, OpeningCheck check) =>
        opening with { Model = opening.Model with { Left = opening.Model.Left + check.MoveLeft, Right = opening.Model.Right + check.MoveRight } };

    private static WallLayout With(WallLayout wall, WallLayout kept, WallLayout cured)
    {
        var moves = Enumerable.Range(0, wall.Openings.Length).Where(i => kept.Openings[i].Placed != cured.Openings[i].Placed).ToList();
        if (moves.Count == 0)
        {
            return wall;
        }

        var costs = new KeepCost[wall.Openings.Length];
        foreach (var (rect, cost) in Counted(kept).Concat(Counted(cured).Select(counted => (counted.At, Cost: -counted.Cost))))
        {
            costs[moves.MinBy(i => Distance(wall.Openings[i].Design, rect))] += cost;
        }

        return wall with
        {
            Openings = [.. wall.Openings.Select((opening, i) => opening.Check is { } check && moves.Contains(i) ? opening with { Check = check with { Cost = costs[i] } } : opening)],
        };
    }

    /// <summary>What is cut in a wall or breaks a rule, each at its place.</summary>
    private static IEnumerable<(ElevationRect At, KeepCost Cost)> Counted(WallLayout wall) => wall.Courses
        .SelectMany(course => course.Pieces)
        .Where(piece => piece.Cut != Cuts.None)
        .Select(piece => (new ElevationRect(piece.From, piece.To, piece.Bottom, piece.Top), new KeepCost(1, BitOperations.PopCount((uint)piece.Cut), 0, 0)))
        .Concat(wall.Findings.Where(finding => finding.Code == FindingCodes.PieceShort || finding.Code == FindingCodes.OverlapShort).Select(finding =>
        {
            var (s, z) = (finding.At?.S ?? Length.Zero, finding.At?.Z ?? Length.Zero);
            return (new ElevationRect(s, s, z, z), finding.Code == FindingCodes.PieceShort ? new KeepCost(0, 0, 1, 0) : new KeepCost(0, 0, 0, 1));
        }));

    /// <summary>How far a place lies from an opening: along the run first, then upwards.</summary>
    private static (Length Along, Length Up) Distance(ElevationRect opening, ElevationRect place) => (
        Gap((place.Left + place.Right) / 2, opening.Left, opening.Right), Gap((place.Bottom + place.Top) / 2, opening.Bottom, opening.Top));

    private static Length Gap(Length at, Length from, Length to) => Length.Max(Length.Max(from - at, at - to), Length.Zero);
}
