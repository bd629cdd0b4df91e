using IfcCourser.Comparing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>A storey with what its set-out sheet needs of the layout.</summary>
internal sealed class SetOutFacts
{
    private readonly Dictionary<string, WallLayout> _walls;

    public SetOutFacts(Layout layout, StoreySetOut storey, Reissue? since = null)
    {
        Layout = layout;
        Storey = storey;
        Text = new SheetLengths(layout.Rules.Catalog.Units);
        _walls = layout.Walls.GroupBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal).ToDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);
        Walls = [.. layout.Walls.Where(wall => string.Equals(wall.Identity.Storey, storey.Storey, StringComparison.Ordinal))];
        CastIn = [.. storey.Bars.Where(bar => bar.IsCastIn)];
        Clouds = new PlanClouds(since, Walls.Where(wall => wall.Courses.Length > 0).Select(wall => (wall, wall.Courses[0])));
    }

    public Layout Layout { get; }

    public StoreySetOut Storey { get; }

    public SheetLengths Text { get; }

    /// <summary>Coursed walls of the storey.</summary>
    public ImmutableArray<WallLayout> Walls { get; }

    /// <summary>What changed since the last issue.</summary>
    public PlanClouds Clouds { get; }

    /// <summary>Bars that are cast into the slab, in walking order.</summary>
    public ImmutableArray<BarSetOut> CastIn { get; }

    /// <summary>Around all edges, in the storey's axes, mm.</summary>
    public Box Edges => Box.Around(Storey.Outlines.SelectMany(outline => outline.Loop).Select(At));

    public WallLayout WallOf(BarSetOut bar) => _walls[bar.Wall];

    public Core CoreOf(BarSetOut bar) => WallOf(bar).Cores.First(core => string.Equals(core.Id, bar.Core, StringComparison.Ordinal));

    /// <summary>What is cast in for a bar of <see cref="CastIn"/>.</summary>
    public StarterBar StarterOf(BarSetOut bar) => CoreOf(bar).Bars!.Starter!;

    /// <summary>The wall's sheet, such as W003.</summary>
    public string WallNumber(string globalId) => WallNumbers.Sheet(Layout, _walls[globalId]);

    /// <summary>A point of the model in the storey's axes.</summary>
    public Point At(Vector2 point)
    {
        var at = Storey.Axes.Of(point);
        return new Point(at.X, at.Y);
    }

    /// <summary>A point of a wall's plan in the storey's axes.</summary>
    public Point At(WallLayout wall, Length s, Length t) => At(wall.Frame.PointAt(s, t, Length.Zero).Plan);

    public static Point At(BarSetOut bar) => new(bar.X.Mm, bar.Y.Mm);

    public static Point At(ControlPoint point) => new(point.X.Mm, point.Y.Mm);
}
