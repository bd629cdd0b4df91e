using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>Settles a wall's openings: the masonry openings wanted, course lines, module lines and the moves onto them.</summary>
public static class OpeningPlacement
{
    /// <param name="wall">The wall.</param>
    /// <param name="courses">Its courses from the bottom up, each from its underside to its top.</param>
    /// <param name="rules">Allowances, policy, module.</param>
    /// <returns>The openings in the wall's order, and the wall's module lines.</returns>
    public static (ImmutableArray<OpeningLayout> Openings, ModuleLines Lines) Settle(
        Wall wall, ImmutableArray<Interval> courses, LayoutRules rules)
    {
        var designs = wall.Openings.Select(opening => Design(opening, rules.Set.Allowances)).ToImmutableArray();
        var movable = Enumerable.Range(0, designs.Length).Where(i => IsCoursedAround(wall.Openings[i]) && !wall.Openings[i].IsFixed).ToImmutableArray();
        ImmutableArray<ElevationRect> wanted = [.. movable.Select(i => designs[i])];
        var heights = rules.Openings == OpeningPolicy.Keep ? wanted : OpeningHeights.SnapAll(wanted, courses, rules);
        var run = new Interval(Length.Zero, wall.Frame.Length);
        var best = Datums(wall, heights, rules)
            .Select(start => new ModuleLines(start, rules.Module))
            .Select(lines => (Lines: lines, Moves: OpeningMoves.Solve(heights, run, lines, rules)))
            .MinBy(choice => choice.Moves.Score);
        var placed = designs.ToArray();
        for (var i = 0; i < movable.Length; i++)
        {
            placed[movable[i]] = best.Moves.Placed[i];
        }

        var grid = new ModuleGrid(best.Lines, rules.Catalog.HeadJoint.Nominal);
        bool IsOnModule(ElevationRect rect) =>
            Length.Abs(grid.LeftJambToLine(rect.Left)) <= rules.ModuleTolerance && Length.Abs(grid.RightJambToLine(rect.Right)) <= rules.ModuleTolerance;
        return (
            [.. wall.Openings.Select((opening, i) => new OpeningLayout(opening, designs[i], placed[i], IsOnModule(placed[i])))],
            best.Lines);
    }

    /// <summary>The masonry opening wanted: the void as drawn and the rules' allowances.</summary>
    public static ElevationRect Design(WallOpening opening, OpeningAllowances allowances) => opening.Kind switch
    {
        OpeningKind.Door => Grown(opening.Model, allowances.Door.Total),
        OpeningKind.Window => Grown(opening.Model, allowances.Window.Total),
        _ => opening.Model,
    };

    // Below the wall's base there is nothing to leave out.
    private static ElevationRect Grown(ElevationRect rect, Margin margin) =>
        new(rect.Left - margin.Side, rect.Right + margin.Side, Length.Max(rect.Bottom - margin.Sill, Length.Min(rect.Bottom, Length.Zero)), rect.Top + margin.Head);

    /// <summary>Whether courses stop at an opening; recesses and drilled holes do not interrupt the coursing.</summary>
    public static bool IsCoursedAround(WallOpening opening) =>
        opening.Kind is OpeningKind.Door or OpeningKind.Window or OpeningKind.Void;

    /// <summary>Starts of the module lines to choose from; the first counts where they are equal.</summary>
    private static IEnumerable<Length> Datums(Wall wall, ImmutableArray<ElevationRect> openings, LayoutRules rules)
    {
        var joint = rules.Catalog.HeadJoint.Nominal;
        var start = wall.Start.Kind is EndKind.Tee or EndKind.Cross ? joint : Length.Zero;
        var end = (wall.Frame.Length + (wall.End.Kind is EndKind.Tee or EndKind.Cross ? Length.Zero : joint)).Modulo(rules.Module);
        return rules.Set.Datum switch
        {
            Datum.Start => [start],
            Datum.End => [end],
            _ => openings
                .SelectMany(opening => new[] { (opening.Left + joint).Modulo(rules.Module), opening.Right.Modulo(rules.Module) })
                .Prepend(end)
                .Prepend(start)
                .Distinct(),
        };
    }
}
