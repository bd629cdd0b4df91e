using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>
/// Trims and extends masonry runs to each other over their common height: at a corner to the other's outer face, at a tee to
/// the host's near face, in line to the middle of the gap.
/// </summary>
public static class RunSettler
{
    /// <summary>Tops and bottoms that differ by no more than this, mm, count as level.</summary>
    private const double Level = 20;

    /// <summary>The drafts with their outlines settled.</summary>
    public static ImmutableArray<WallDraft> Settle(ImmutableArray<WallDraft> walls, ImmutableArray<Encounter> encounters)
    {
        var outlines = walls.Select(wall => wall.Outline).ToArray();
        foreach (var encounter in encounters)
        {
            foreach (var arm in new[] { encounter.First, encounter.Second })
            {
                if (EndOf(encounter, arm) is { } place)
                {
                    var height = encounter.Height.ShiftedBy(-walls[arm.Wall].Space.Origin.Z);
                    outlines[arm.Wall] = Moved(outlines[arm.Wall], arm.Side, place, height);
                }
            }
        }

        return [.. walls.Select((wall, i) => wall with { Outline = outlines[i] })];
    }

    private static double? EndOf(Encounter encounter, Arm arm) => (encounter.Kind, arm.Side) switch
    {
        (_, JunctionSide.Along) or (JunctionKind.Cross, _) => null,
        (JunctionKind.Tee, _) when arm == encounter.First => null,
        (JunctionKind.Tee, JunctionSide.End) or (not JunctionKind.Tee, JunctionSide.Start) => arm.Stretch.From,
        _ => arm.Stretch.To,
    };

    private static Region Moved(Region outline, JunctionSide side, double place, Slab height)
    {
        var all = outline.Bounds;
        var isEnd = side == JunctionSide.End;
        var end = isEnd ? all.Right : all.Left;
        var edge = outline.Intersect(Region.Of(isEnd ? new Rect(end - 1, all.Bottom, end, all.Top) : new Rect(end, all.Bottom, end + 1, all.Top))).Bounds;
        var bottom = height.From <= edge.Bottom + Level ? edge.Bottom : height.From;
        var top = height.To >= edge.Top - Level ? edge.Top : height.To;
        var isLonger = isEnd ? place > end : place < end;
        if (isLonger)
        {
            var added = isEnd ? new Rect(end - 1, bottom, place, top) : new Rect(place, bottom, end + 1, top);
            return outline.Union(Region.Of(added));
        }

        var (from, to) = (bottom <= edge.Bottom ? all.Bottom - 1 : bottom, height.To >= all.Top - Level ? all.Top + 1 : top);
        var cut = outline.Subtract(Region.Of(isEnd ? new Rect(place, from, end + 1, to) : new Rect(end - 1, from, place, to)));
        return cut.IsEmpty ? cut : cut.Parts[0];
    }
}
