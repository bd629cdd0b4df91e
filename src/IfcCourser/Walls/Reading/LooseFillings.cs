using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Ifc;

namespace IfcCourser.Walls.Reading;

/// <summary>
/// Finds the walls and openings that doors and windows stand in where the model does not relate them: those that stand in an
/// opening fill it; those that stand in masonry are kept with their wall, to be reported.
/// </summary>
public static class LooseFillings
{
    /// <summary>A door or window stands in what holds this share of its elevation.</summary>
    private const double Share = 0.5;

    /// <summary>Frames stand out of a wall by as much as this, mm.</summary>
    private const double Proud = 50;

    public static ImmutableArray<WallDraft> Placed(ImmutableArray<WallDraft> walls, IfcModel model)
    {
        if (model.LooseFillings.IsEmpty)
        {
            return walls;
        }

        var extents = new FillingExtents(model);
        var placed = walls.ToArray();
        foreach (var filling in model.LooseFillings.OrderBy(filling => filling.GlobalId, StringComparer.Ordinal))
        {
            var points = extents.Points(filling);
            if (!points.IsEmpty)
            {
                Place(placed, filling, points);
            }
        }

        return [.. placed];
    }

    private static void Place(WallDraft[] walls, IfcFillingRecord filling, ImmutableArray<Vector3> points)
    {
        var box = Box3.Around(points);
        var hosts = Enumerable.Range(0, walls.Length)
            .Where(i => box.Grown(Proud).Overlaps(new Box3(walls[i].Body.Min, walls[i].Body.Max)))
            .Select(i => (Wall: i, Rect: StandsIn(walls[i], points)))
            .Where(host => host.Rect is not null)
            .Select(host => (host.Wall, Rect: host.Rect!.Value, Opening: OpeningFor(walls[host.Wall], host.Rect.Value)))
            .ToList();
        foreach (var (wall, _, opening) in hosts.Where(host => host.Opening >= 0 && walls[host.Wall].Openings[host.Opening].Opening.FillingId is null))
        {
            var draft = walls[wall].Openings[opening];
            walls[wall] = walls[wall] with
            {
                Openings = walls[wall].Openings.SetItem(opening, draft with { Opening = OpeningDrafts.Filled(draft.Opening, filling) }),
            };
        }

        if (hosts.Count > 0 && hosts.TrueForAll(host => host.Opening < 0))
        {
            var (wall, rect, _) = hosts.MaxBy(host => walls[host.Wall].Across.Size);
            walls[wall] = walls[wall] with { Loose = walls[wall].Loose.Add(new LooseFilling(filling, rect)) };
        }
    }

    // Its rectangle in the wall's elevation, where it stands between the wall's faces and mostly before its masonry.
    private static Rect? StandsIn(WallDraft wall, ImmutableArray<Vector3> points)
    {
        var own = Box3.Around(points.Select(wall.Space.FromModel.Point));
        var middle = (own.Min.Y + own.Max.Y) / 2;
        var rect = new Rect(own.Min.X, own.Min.Z, own.Max.X, own.Max.Z);
        return middle > wall.Across.From - Proud && middle < wall.Across.To + Proud
            && own.Max.Y > wall.Across.From && own.Min.Y < wall.Across.To
            && !rect.IsEmpty
            && Region.Of(rect).Intersect(wall.Outline).Area >= Share * rect.Width * rect.Height ? rect : null;
    }

    private static int OpeningFor(WallDraft wall, Rect filling)
    {
        var region = Region.Of(filling);
        var best = Enumerable.Range(0, wall.Openings.Length)
            .Where(i => wall.Openings[i].GoesThrough)
            .Select(i => (Index: i, Common: wall.Openings[i].Shape.Intersect(region).Area))
            .Where(opening => opening.Common >= Share * filling.Width * filling.Height)
            .OrderByDescending(opening => opening.Common)
            .ThenBy(opening => opening.Index)
            .ToList();
        return best.Count == 0 ? -1 : best[0].Index;
    }
}
