using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>Settles the openings of walls: the masonry openings wanted, course lines, module lines and the moves onto them.</summary>
public static class OpeningPlacement
{
    /// <param name="walls">Walls, each with its courses from the bottom up, from their undersides to their tops.</param>
    /// <param name="rules">Allowances, policy, module; whether stacked openings move together.</param>
    /// <returns>Of each wall its openings, in the wall's order, and its module lines.</returns>
    public static ImmutableArray<PlacedOpenings> Settle(ImmutableArray<(Wall Wall, ImmutableArray<Interval> Courses)> walls, LayoutRules rules)
    {
        var placed = new PlacedOpenings[walls.Length];
        ImmutableArray<Wall> all = [.. walls.Select(wall => wall.Wall)];
        var facades = rules.Set.StackOpenings ? Facade.Stacked(all) : Facade.Single(all);
        Parallel.ForEach(facades, facade => Settle(facade, walls, WallRules.Of(all[facade.Walls[0]], rules), placed));
        return [.. placed];
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

    private static void Settle(
        Facade facade, ImmutableArray<(Wall Wall, ImmutableArray<Interval> Courses)> walls, LayoutRules rules, PlacedOpenings[] placed)
    {
        var heights = facade.Walls.Select(wall => Heights(walls[wall].Wall, walls[wall].Courses, rules)).ToList();
        ImmutableArray<MovableOpening> openings =
            [.. heights.SelectMany((wanted, member) => wanted.Select((rect, i) => Movable(facade, member, walls[facade.Walls[member]].Wall, i, rect)))];
        openings = rules.Set.StackOpenings ? OpeningStacks.InLine(openings, rules.ModuleTolerance) : OpeningStacks.Alone(openings);
        var (start, shifts) = Best(facade, walls, openings, rules);
        var next = 0;
        for (var member = 0; member < facade.Walls.Length; member++)
        {
            var wall = walls[facade.Walls[member]].Wall;
            var own = shifts.Skip(next).Take(heights[member].Length).Select(shift => facade.ToWall(member, shift)).ToList();
            next += own.Count;
            var lines = new ModuleLines(facade.LineToWall(member, start, rules.Catalog.HeadJoint.Nominal).Modulo(rules.Module), rules.Module);
            placed[facade.Walls[member]] = new PlacedOpenings(Layouts(wall, heights[member], own, lines, rules), lines);
        }
    }

    /// <summary>
    /// The wall's openings that courses stop at, with heads and sills on course lines where they may go there; gaps that the
    /// wall's own body leaves stay where they are.
    /// </summary>
    private static ImmutableArray<ElevationRect> Heights(Wall wall, ImmutableArray<Interval> courses, LayoutRules rules)
    {
        var openings = wall.Openings.Where(IsCoursedAround).ToList();
        ImmutableArray<ElevationRect> wanted = [.. openings.Select(opening => Design(opening, rules.Set.Allowances))];
        return rules.Openings == OpeningPolicy.Keep
            ? wanted
            : new OpeningHeights(wall, courses, rules).SnapAll(wanted, [.. openings.Select(opening => opening.IsFixed)]);
    }

    /// <param name="number">Its place among the wall's openings that courses stop at.</param>
    private static MovableOpening Movable(Facade facade, int member, Wall wall, int number, ElevationRect rect)
    {
        var isFixed = wall.Openings.Where(IsCoursedAround).ElementAt(number).IsFixed;
        var jambs = facade.FromWall(member, new Interval(rect.Left, rect.Right));
        return new MovableOpening(
            rect with { Left = jambs.From, Right = jambs.To }, facade.FromWall(member, new Interval(Length.Zero, wall.Frame.Length)), member, 0, isFixed);
    }

    /// <summary>The module lines on which the openings need to move least, and their moves; the first wall's start counts where equal.</summary>
    private static (Length Start, ImmutableArray<JambShift> Shifts) Best(
        Facade facade, ImmutableArray<(Wall Wall, ImmutableArray<Interval> Courses)> walls, ImmutableArray<MovableOpening> openings, LayoutRules rules)
    {
        var joint = rules.Catalog.HeadJoint.Nominal;
        var first = walls[facade.Walls[0]].Wall;
        var starts = ModuleDatums.Fixed(first, rules) is { } start
            ? [start]
            : facade.Walls
                .SelectMany((wall, member) => new[] { ModuleDatums.AtStart(walls[wall].Wall, rules), ModuleDatums.AtEnd(walls[wall].Wall, rules) }
                    .Select(line => facade.LineFromWall(member, line, joint).Modulo(rules.Module)))
                .Concat(ModuleDatums.Critical(openings, rules))
                .Distinct();
        var best = (Start: Length.Zero, Shifts: ImmutableArray<JambShift>.Empty, Score: new MoveScore(int.MaxValue, 0, Length.Zero));
        foreach (var line in starts)
        {
            var (shifts, score) = OpeningMoves.Solve(openings, new ModuleGrid(new ModuleLines(line, rules.Module), joint), rules);
            best = score.CompareTo(best.Score) < 0 ? (line, shifts, score) : best;
            if (score == default)
            {
                break;
            }
        }

        return (best.Start, best.Shifts);
    }

    private static ImmutableArray<OpeningLayout> Layouts(
        Wall wall, ImmutableArray<ElevationRect> heights, List<JambShift> shifts, ModuleLines lines, LayoutRules rules)
    {
        var grid = new ModuleGrid(lines, rules.Catalog.HeadJoint.Nominal);
        bool IsOnModule(ElevationRect rect) =>
            Length.Abs(grid.LeftJambToLine(rect.Left)) <= rules.ModuleTolerance && Length.Abs(grid.RightJambToLine(rect.Right)) <= rules.ModuleTolerance;
        var layouts = ImmutableArray.CreateBuilder<OpeningLayout>();
        var next = 0;
        foreach (var opening in wall.Openings)
        {
            var design = Design(opening, rules.Set.Allowances);
            var placed = design;
            if (IsCoursedAround(opening))
            {
                placed = shifts[next].Of(heights[next]);
                next++;
            }

            layouts.Add(new OpeningLayout(opening, design, placed, IsOnModule(placed)));
        }

        return layouts.ToImmutable();
    }
}
