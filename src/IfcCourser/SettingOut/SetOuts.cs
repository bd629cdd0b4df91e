using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>Sets out the bars of a finished layout, storey by storey.</summary>
public static class SetOuts
{
    /// <summary>Control points are numbered from the next such number after the last bar, so that the two are told apart.</summary>
    private const int Hundred = 100;

    /// <summary>A layout with its set-out, and findings about it.</summary>
    /// <param name="layout">All its walls coursed, their cores in place.</param>
    /// <param name="site">Of the same model.</param>
    public static Layout With(Layout layout, Site site)
    {
        var walls = layout.Walls.GroupBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal).ToDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);
        var storeys = new List<StoreySetOut>();
        var barCount = layout.Walls.Sum(wall => wall.Cores.Length);
        var (nextBar, nextPoint) = (1, ((barCount / Hundred) + 1) * Hundred + 1);
        foreach (var storey in layout.Walls.GroupBy(wall => wall.Identity.Storey, StringComparer.Ordinal)
            .Where(storey => storey.Any(wall => !wall.Cores.IsEmpty))
            .OrderBy(storey => storey.Min(wall => wall.Frame.Origin.Z)).ThenBy(storey => storey.Key, StringComparer.Ordinal))
        {
            var setOut = Storey(storey.Key, [.. storey], walls, site, nextBar, nextPoint);
            if (layout.Rules.Set.EdgeDistances is { } rule)
            {
                setOut = setOut with { Findings = [.. setOut.Findings, .. EdgeAdvice.Of(setOut, Corners(setOut, walls), rule, layout.Rules.Catalog.Units)] };
            }

            (nextBar, nextPoint) = (nextBar + setOut.Bars.Length, nextPoint + setOut.ControlPoints.Length);
            storeys.Add(setOut);
        }

        return layout with
        {
            ShootingList = ShootingLists.Of(layout, storeys.Count == 0 ? 1 : ((nextPoint - 1) / Hundred + 1) * Hundred + 1),
            Site = site,
            SetOut = new SetOut(site.Survey, site.TrueNorth, [.. storeys]),
            Findings = [.. layout.Findings, .. storeys.SelectMany(storey => storey.Findings)],
        };
    }

    /// <summary>The set-out of a layout whose bars stand otherwise now: numbers, axes and control points stay.</summary>
    public static Layout Again(Layout layout)
    {
        var walls = layout.Walls.GroupBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal).ToDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);
        return layout with { SetOut = layout.SetOut with { Storeys = [.. layout.SetOut.Storeys.Select(storey => storey with { Bars = [.. storey.Bars.Select(bar => Bar(bar, storey.Axes))] })] } };

        BarSetOut Bar(BarSetOut bar, SetOutAxes axes)
        {
            var wall = walls[bar.Wall];
            var core = wall.Cores.First(core => string.Equals(core.Id, bar.Core, StringComparison.Ordinal));
            var foot = Foot(wall, core);
            var (x, y) = axes.Measured(foot.Plan);
            return bar with { Point = foot, X = x, Y = y, Block = FootBlocks.Of(wall, core, walls), OnFace = bar.OnFace is { } face ? face with { Along = core.At - wall.Wall.LeftFace.From } : null };
        }
    }

    private static StoreySetOut Storey(
        string? name, ImmutableArray<WallLayout> walls, Dictionary<string, WallLayout> all, Site site, int firstBar, int firstPoint)
    {
        var cores = walls.SelectMany(wall => wall.Cores.Select(core => (Wall: wall, Core: core))).ToLookup(bar => FootOf(bar.Core));
        ImmutableArray<Vector3> feet = [.. cores[BarFoot.Slab].Select(bar => Foot(bar.Wall, bar.Core))];
        var (outlines, finding) = SlabEdges.Of(name, feet, walls, site.Slabs);
        var faces = SlabEdges.OfWalls(walls, feet);
        var axes = AxesChoice.Of(walls, site.Grid, outlines);
        var parallel = site.Grid.Where(line => PlanLine.IsParallel(line.Direction, axes.Along) || PlanLine.IsParallel(line.Direction, axes.Along.Left)).ToImmutableArray();
        var points = new ControlPoints(axes, firstPoint);
        points.AddCrossings(parallel, outlines);
        points.AddWallCorners(faces, walls);
        points.AddSlabCorners(outlines);
        var ordered = new[] { BarFoot.Slab, BarFoot.BarBelow, BarFoot.Head }.SelectMany(foot => WalkingOrder.Of(walls, cores[foot], axes));
        var bars = ordered.Select((bar, i) => Bar(firstBar + i, bar.Wall, bar.Core, axes, points, all)).ToImmutableArray();
        return new StoreySetOut
        {
            Storey = name,
            Axes = axes,
            Outlines = outlines,
            Grid = parallel,
            CheckLines = CheckLines.Of(axes, parallel, outlines, faces),
            ControlPoints = points.All,
            Diagonals = points.Diagonals(),
            Bars = bars,
            Findings = finding is null ? [] : [finding],
        };
    }

    private static BarSetOut Bar(
        int number, WallLayout wall, Core core, SetOutAxes axes, ControlPoints points, Dictionary<string, WallLayout> all)
    {
        var foot = Foot(wall, core);
        var (x, y) = axes.Measured(foot.Plan);
        var isSkew = wall.Frame.Curve is null
            && !PlanLine.IsParallel(wall.Frame.Direction, axes.Along) && !PlanLine.IsParallel(wall.Frame.Direction, axes.Along.Left);
        return new BarSetOut
        {
            Number = number,
            Wall = wall.Identity.GlobalId,
            Core = core.Id,
            Foot = FootOf(core),
            Point = foot,
            X = x,
            Y = y,
            Block = FootBlocks.Of(wall, core, all),
            OnFace = isSkew ? new SkewPlace(points.AddSkewCorner(wall), core.At - wall.Wall.LeftFace.From, core.Across) : null,
        };
    }

    private static HashSet<int> Corners(StoreySetOut storey, Dictionary<string, WallLayout> walls) =>
    [
        .. storey.Bars
            .Where(bar => walls[bar.Wall].Cores.First(core => string.Equals(core.Id, bar.Core, StringComparison.Ordinal)).SharedWith is not [])
            .Select(bar => bar.Number),
    ];

    private static BarFoot FootOf(Core core) => core.Bars switch
    {
        { Starter: not null } => BarFoot.Slab,
        { RunsOnFrom: not null } => BarFoot.BarBelow,
        _ => BarFoot.Head,
    };

    private static Vector3 Foot(WallLayout wall, Core core) => new(core.Point.X, core.Point.Y, wall.Frame.Origin.Z + core.Bottom.Mm);
}
