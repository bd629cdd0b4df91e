using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Slabs;

namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>The axes that a storey's slab is drawn in: those of its set-out, else along its first wall.</summary>
internal sealed class SlabAxes
{
    private readonly Layout _layout;
    private readonly Vector2 _origin;
    private readonly Vector2 _along;

    /// <param name="first">Any block of the storey.</param>
    public SlabAxes(Layout layout, string? storey, FirstCourseBlock first)
    {
        _layout = layout;
        var axes = layout.SetOut.Storeys.FirstOrDefault(known => string.Equals(known.Storey, storey, StringComparison.Ordinal))?.Axes;
        var frame = first.Wall.Frame;
        (_origin, _along) = axes is null ? (frame.Origin.Plan, Rightwards(frame.Direction)) : (axes.Origin, axes.Along);
    }

    /// <summary>A place of the model on the plan, mm.</summary>
    public Point At(Vector2 place) => new(Vector2.Dot(place - _origin, _along), Vector2.Dot(place - _origin, _along.Left));

    public Point[] Loop(FirstCourseBlock block) => [.. block.Loop.Select(At)];

    /// <summary>The wall's sheet, such as W003.</summary>
    public string WallNumber(WallLayout wall) => WallNumbers.Sheet(_layout, wall);

    private static Vector2 Rightwards(Vector2 along)
    {
        Vector2[] ways = [along, along.Left, -along, -along.Left];
        return ways.MaxBy(way => way.X);
    }
}
