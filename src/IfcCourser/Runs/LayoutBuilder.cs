using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Panels;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.SettingOut;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>Lays out every wall of a model: course lines per group, corners over the whole model, then wall by wall.</summary>
public static class LayoutBuilder
{
    /// <param name="model">The walls and how they meet.</param>
    /// <param name="rules">Catalog, rule set and options of the run.</param>
    /// <param name="facts">Which model it is.</param>
    /// <returns>A layout with each wall of the model laid out or skipped with its reason.</returns>
    public static Layout Build(WallModel model, LayoutRules rules, ModelFacts facts) => Build(model, rules, facts, standing: []);

    /// <param name="model">The walls and how they meet.</param>
    /// <param name="rules">Catalog, rule set and options of the run.</param>
    /// <param name="facts">Which model it is.</param>
    /// <param name="standing">Walls that stand as another run laid them out where this one does not: bars run on from them.</param>
    internal static Layout Build(WallModel model, LayoutRules rules, ModelFacts facts, ImmutableArray<WallLayout> standing)
    {
        var (lines, steps) = LevelGroups.Of(model, rules);
        var tables = new RunTables();
        var plan = new JunctionPlan(lines, model.Junctions, rules);
        var turns = new CornerTurns(lines, model.Junctions, plan, rules, tables.Rests).Choose();
        var placed = OpeningPlacement.Settle(
            [.. lines.Select(wall => (wall.Wall, wall.Bands.Select(band => new Interval(band.Bottom, band.Top)).ToImmutableArray()))], rules);
        ImmutableArray<ImmutableArray<ElevationRect>> interrupted =
            [.. placed.Select(wall => wall.Openings.Where(opening => opening.Interrupts).Select(opening => opening.Placed).ToImmutableArray())];
        lines = BeamLines.Of(lines, model.Junctions, interrupted, rules);
        var shares = new JunctionShares(lines, model.Junctions, plan, turns, interrupted, rules);
        var owners = new CornerOwners(lines, interrupted);
        var layouts = new WallLayout?[lines.Length];
        var selected = model.Walls.Where(wall => wall.IsSelected).Select(wall => wall.Identity.StepId).ToHashSet();
        foreach (var storey in BarsBelow.Storeys(model.Walls))
        {
            ImmutableArray<WallLayout> below = [.. layouts.OfType<WallLayout>(), .. standing.Where(wall => !selected.Contains(wall.Identity.StepId))];
            Parallel.ForEach(storey.Where(i => !lines[i].Bands.IsEmpty && model.Walls[i].IsSelected), i => layouts[i] = Solve(i, below, Corners(model, plan, lines, owners, rules, i)));
            var crossed = storey.Where(i => layouts[i] is not null)
                .Select(i => (Wall: i, Corners: LintelsInCorners.Of(model, layouts, i, Corners(model, plan, lines, owners, rules, i))))
                .Where(wall => LintelsInCorners.AreHit(layouts[wall.Wall]!, wall.Corners)).ToList();
            Parallel.ForEach(crossed, wall => layouts[wall.Wall] = Solve(wall.Wall, below, wall.Corners));
        }

        var walls = CornerCores.Fill([.. layouts.OfType<WallLayout>()], rules);
        walls = rules.Set.Bars is { } bars ? [.. new CoreDetails(walls, bars, rules.BarListForm).Fill().Select(wall => wall with { Findings = [.. wall.Findings, .. BarFindings.Of(wall, walls, rules.Catalog.Units)] })] : walls;
        walls = rules.Set.BondBeams is { } beams ? new BeamDetails(walls, beams.Bars, rules).Fill() : walls;
        walls = [.. walls.Select(wall => EmbedPlaces.Fill(wall, rules.Catalog.Units))];
        var schedule = new BarSchedules(walls, rules);
        walls = schedule.Walls;
        var listed = schedule.Rows();
        var layout = new Layout
        {
            Model = facts,
            Rules = rules,
            Walls = [.. walls.OrderBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal).ThenBy(wall => wall.Identity.StepId)],
            BarSchedule = listed,
            Skipped = [.. model.Skipped.Concat(TooLow(lines, rules)).Concat(NotSelected(lines)).OrderBy(wall => wall.Identity.StepId)],
            WallIds = [.. model.Walls.Select(wall => wall.Identity.GlobalId)],
            Junctions = JunctionLayouts.Of(model, lines, plan, turns, rules),
            Findings = [.. model.Findings, .. steps, .. plan.Tees.Tied, .. rules.Set.Bars is { } rule ? BarFindings.Of(walls, rule) : [], .. BarFindings.TooLong(listed, rules)],
        };
        return RoundedLayout.Of(SetOuts.With(layout, model.Site));

        WallLayout Solve(int i, ImmutableArray<WallLayout> below, ImmutableArray<CornerBar> corners)
        {
            var around = new WallSurroundings(
                band => [.. shares.TakenFrom(i, band)], band => plan.Beyond(i, band), corners, CrossedBy(model, i), Met(model, plan, i),
                [.. BarsBelow.Of(model.Walls[i], below).Select(bar => bar.At).Distinct().Order()]);
            return new WallRun(lines[i], placed[i], around, WallRules.Of(model.Walls[i], rules), tables).Solve();
        }
    }

    private static ImmutableArray<CornerBar> Corners(WallModel model, JunctionPlan plan, ImmutableArray<WallLines> lines, CornerOwners owners, LayoutRules rules, int wall) =>
    [
        .. plan.JunctionsOf(wall)
            .Where(j => model.Junctions[j].Kind == JunctionKind.Corner)
            .Select(j => (Index: j, Junction: model.Junctions[j], Other: model.Junctions[j].First == wall ? model.Junctions[j].Second : model.Junctions[j].First))
            .Select(j => new CornerBar(
                j.Index,
                JunctionPlan.PlaceOn(j.Junction, wall),
                model.Walls[j.Other].Identity.GlobalId,
                owners.Of(j.Junction) == wall,
                plan.IsBondedCorner(j.Junction) && BeamDemands.RuleFor(model.Walls[j.Other], rules) is not null ? CornerBeams.Of(lines[wall], lines[j.Other]) : new([], []))
                {
                    HasCores = CoreFit.In(model.Walls[j.Other].Frame.Thickness, rules) is not null,
                }),
    ];

    private static ImmutableArray<MetWall> Met(WallModel model, JunctionPlan plan, int wall) =>
    [
        .. plan.JunctionsOf(wall)
            .Select(j => model.Junctions[j])
            .Select(junction =>
            {
                var other = model.Walls[junction.First == wall ? junction.Second : junction.First];
                return new MetWall(
                    junction.Kind, JunctionPlan.PlaceOn(junction, wall), other.Frame.Thickness, junction.Second == wall, other.Identity.Label, HeightsOver(model.Walls[wall], other));
            }),
    ];

    private static Interval HeightsOver(Wall wall, Wall other)
    {
        var step = Length.FromModelMm(other.Frame.Origin.Z - wall.Frame.Origin.Z);
        return new Interval(step + other.Outline.Min(point => point.Z), step + other.Outline.Max(point => point.Z));
    }

    private static ImmutableArray<string> CrossedBy(WallModel model, int wall) =>
    [
        .. model.Junctions
            .Where(junction => junction.Kind == JunctionKind.Cross && junction.Second == wall)
            .Select(junction => model.Walls[junction.First].Identity.Label),
    ];

    private static IEnumerable<SkippedWall> NotSelected(ImmutableArray<WallLines> lines) => lines
        .Where(wall => !wall.Wall.IsSelected)
        .Select(wall => new SkippedWall(
            wall.Wall.Identity, new Finding(FindingCodes.NotSelected, FindingCodes.NotSelected.Meaning), wall.Wall.Body, wall.Wall.Choice));

    private static IEnumerable<SkippedWall> TooLow(ImmutableArray<WallLines> lines, LayoutRules rules) => lines
        .Where(wall => wall.Bands.IsEmpty && wall.Wall.IsSelected)
        .Select(wall => new SkippedWall(
            wall.Wall.Identity,
            new Finding(FindingCodes.LowerThanOneCourse, HeightFindings.TooLow(wall, rules)),
            wall.Wall.Body,
            wall.Wall.Choice));
}
