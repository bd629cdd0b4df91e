using IfcCourser.Comparing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.SettingOut;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>A storey with what its set-out sheet needs of the layout.</summary>
internal sealed class SetOutFacts
{
    private readonly Dictionary<string, WallLayout> _walls;

    /// <param name="part">Null for the whole storey.</param>
    public SetOutFacts(Layout layout, StoreySetOut storey, Reissue? since = null, PlanPart? part = null)
    {
        Layout = layout;
        Whole = storey;
        Course = new PlanFacts(layout, storey.Storey, 0, since, part);
        Storey = part is null ? storey : part.Of(storey, Course.At);
        Text = new SheetLengths(layout.Rules.Catalog.Units);
        _walls = layout.Walls.GroupBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal).ToDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);
        CastIn = [.. Storey.Bars.Where(bar => bar.IsCastIn)];
        Held = [.. CastIn.Where(bar => HeldBars.IsHeld(WallOf(bar), CoreOf(bar))).Select(bar => bar.Number)];
        Near = [.. CastIn.Where(bar => WallOf(bar).Findings.Any(finding => finding.Code == FindingCodes.CoreOnJoint && finding.At?.Core == bar.Core)).Select(bar => bar.Number)];
    }

    public Layout Layout { get; }

    /// <summary>What the sheet shows of it.</summary>
    public StoreySetOut Storey { get; }

    public StoreySetOut Whole { get; }

    /// <summary>The first course in plan.</summary>
    public PlanFacts Course { get; }

    public PlanPart? Part => Course.Part;

    public SheetLengths Text { get; }

    /// <summary>Coursed walls of the storey, with what the sheet shows of their first course.</summary>
    public ImmutableArray<WallLayout> Walls => Course.Walls;

    /// <summary>What changed since the last issue.</summary>
    public PlanClouds Clouds => Course.Clouds;

    /// <summary>Bars that are cast into the slab, in walking order.</summary>
    public ImmutableArray<BarSetOut> CastIn { get; }

    /// <summary>Numbers of bars to cast in whose place is right only where the designer agrees to an opening as it is laid out.</summary>
    public ImmutableSortedSet<int> Held { get; }

    /// <summary>Numbers of bars to cast in that stand nearer to a joint than the clearance, for no place is clear.</summary>
    public ImmutableSortedSet<int> Near { get; }

    /// <summary>Around all edges that the sheet shows, in the storey's axes, mm.</summary>
    public Box Edges
    {
        get
        {
            var edges = Box.Around(Storey.Outlines.SelectMany(outline => outline.Loop).Select(At));
            return Part is not { Window: var window } ? edges : new Box(
                Math.Max(edges.Left, window.Left), Math.Max(edges.Bottom, window.Bottom), Math.Min(edges.Right, window.Right), Math.Min(edges.Top, window.Top));
        }
    }

    public WallLayout WallOf(BarSetOut bar) => _walls[bar.Wall];

    public Core CoreOf(BarSetOut bar) => WallOf(bar).Cores.First(core => string.Equals(core.Id, bar.Core, StringComparison.Ordinal));

    /// <summary>What is cast in for a bar of <see cref="CastIn"/>.</summary>
    public StarterBar StarterOf(BarSetOut bar) => CoreOf(bar).Bars!.Starter!;

    /// <summary>Ends of the block over a bar; null where none stands there.</summary>
    public BlockEnds? BlockOf(BarSetOut bar) => bar.Block is { } block ? BlockEnds.Of(block, _walls[block.Wall].Frame, Whole.Axes) : null;

    /// <summary>The wall's sheet, such as W003.</summary>
    public string WallNumber(string globalId) => WallNumbers.Sheet(Layout, _walls[globalId]);

    /// <summary>A point of the model in the storey's axes.</summary>
    public Point At(Vector2 point) => Course.At(point);

    /// <summary>A point of a wall's plan in the storey's axes.</summary>
    public Point At(WallLayout wall, Length s, Length t) => At(wall.Frame.PointAt(s, t, Length.Zero).Plan);

    public static Point At(BarSetOut bar) => new(bar.X.Mm, bar.Y.Mm);

    public static Point At(ControlPoint point) => new(point.X.Mm, point.Y.Mm);
}
