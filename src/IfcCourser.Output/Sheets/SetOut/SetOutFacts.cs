using IfcCourser.Comparing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>A storey with what its set-out sheet needs of the layout.</summary>
internal sealed class SetOutFacts
{
    /// <summary>Sine of the angle to an axis up to which a wall lies along it: 1 mm over 10 m.</summary>
    private const double Straight = 1e-4;

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
        Held = [.. CastIn.Where(IsHeld).Select(bar => bar.Number)];
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

    /// <summary>
    /// The block over a bar: along which axis it lies, and from the bar to its ends, back towards zero and on away from it; where it lies along neither
    /// axis, along its wall's face, back towards the point that this is measured from.
    /// </summary>
    public (string Axis, Length Back, Length On)? BlockOf(BarSetOut bar)
    {
        if (bar.Block is not { } block)
        {
            return null;
        }

        var direction = _walls[block.Wall].Frame.Direction;
        var (x, y) = (Vector2.Dot(direction, Whole.Axes.Along), Vector2.Dot(direction, Whole.Axes.Along.Left));
        var axis = Math.Abs(y) < Straight ? "x" : Math.Abs(x) < Straight ? "y" : SetOutText.AlongFace;
        var isBackwards = axis == "x" ? x < 0 : axis == "y" && y < 0;
        return isBackwards ? (axis, block.After, block.Before) : (axis, block.Before, block.After);
    }

    /// <summary>Beside an opening that was moved along the wall, or in the way of one as it was drawn.</summary>
    private bool IsHeld(BarSetOut bar)
    {
        var (wall, core) = (WallOf(bar), CoreOf(bar));
        return wall.Findings.Any(finding => finding.Code == FindingCodes.BarInDoorway && finding.At?.Core == bar.Core)
            || (core.Why.Contains("jamb", StringComparer.Ordinal) && wall.Openings.Where(opening => opening.Interrupts).MinBy(opening => Length.Min(Length.Abs(core.At - opening.Placed.Left), Length.Abs(core.At - opening.Placed.Right))) is { } nearest
                && (nearest.Placed.Left != nearest.Design.Left || nearest.Placed.Right != nearest.Design.Right));
    }

    /// <summary>The wall's sheet, such as W003.</summary>
    public string WallNumber(string globalId) => WallNumbers.Sheet(Layout, _walls[globalId]);

    /// <summary>A point of the model in the storey's axes.</summary>
    public Point At(Vector2 point) => Course.At(point);

    /// <summary>A point of a wall's plan in the storey's axes.</summary>
    public Point At(WallLayout wall, Length s, Length t) => At(wall.Frame.PointAt(s, t, Length.Zero).Plan);

    public static Point At(BarSetOut bar) => new(bar.X.Mm, bar.Y.Mm);

    public static Point At(ControlPoint point) => new(point.X.Mm, point.Y.Mm);
}
