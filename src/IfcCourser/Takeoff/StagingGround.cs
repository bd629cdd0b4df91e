using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace IfcCourser.Takeoff;

/// <summary>Room for packs on a storey: clear of every wall by the working strip, of the ways through doors, and of each other.</summary>
internal sealed class StagingGround
{
    /// <summary>mm between packs, for forks and straps. Common practice, no source.</summary>
    private const double Between = 100;

    /// <summary>mm: how finely places along a wall are tried.</summary>
    private const double Step = 100;

    private const double Dust = 1e-3;

    private readonly StagingData _data;
    private readonly bool _isOnGround;
    private readonly STRtree<Polygon> _walls = new();
    private readonly STRtree<Polygon> _around = new();
    private readonly STRtree<Polygon> _ways = new();
    private readonly List<Polygon> _packs = [];

    /// <param name="walls">Of the storey.</param>
    /// <param name="below">Of the storey under it, between which its slab lies; null on the ground, where packs may stand outside as well.</param>
    public StagingGround(IReadOnlyCollection<WallLayout> walls, IReadOnlyCollection<WallLayout>? below, StagingData data)
    {
        (_data, _isOnGround) = (data, below is null);
        Insert(_walls, walls.SelectMany(wall => WallSequence.Polygons(wall)));
        Insert(_around, walls.Concat(below ?? []).SelectMany(wall => WallSequence.Polygons(wall)));
        Insert(_ways, walls.SelectMany(Ways).Select(PlanPolygon.Of));
    }

    /// <summary>The place beside a wall nearest to a share of its length, inside the walls rather than outside; null where there is none.</summary>
    public StagedPlace? Place(WallLayout wall, double share)
    {
        var target = wall.Frame.Length.Mm * share;
        var found = Places(wall)
            .Select(place => (place.Place, place.Away, Off: Math.Abs(place.S - target), Loop: place.Place.Loop(_data)))
            .Select(place => (place.Place, place.Loop, IsInside: IsInside(place.Loop, place.Place.Along), Effort: place.Off + (2 * place.Away)))
            .Where(place => _isOnGround || place.IsInside)
            .OrderBy(place => place.IsInside ? 0 : 1).ThenBy(place => place.Effort)
            .FirstOrDefault(place => IsFree(PlanPolygon.Of(place.Loop)));
        if (found.Place is not null)
        {
            _packs.Add(PlanPolygon.Of(found.Loop));
        }

        return found.Place;
    }

    private IEnumerable<(StagedPlace Place, double S, double Away)> Places(WallLayout wall)
    {
        var (length, half) = (wall.Frame.Length.Mm, Math.Min(wall.Frame.Length.Mm, _data.PackLength.Mm) / 2);
        for (var s = half; s <= length - half + Dust; s += Step)
        {
            var at = Length.FromMm(s);
            var along = (wall.Frame.PointAt(at + Length.FromMm(1), default, default).Plan - wall.Frame.PointAt(at, default, default).Plan).Unit();
            for (var away = _data.Strip.Mm; away <= _data.Reach.Mm + Dust; away += _data.PackWidth.Mm + Between)
            {
                var middle = Length.FromMm(away + (_data.PackWidth.Mm / 2));
                yield return (new StagedPlace(wall.Identity.GlobalId, wall.Frame.PointAt(at, -middle, default).Plan, along), s, away);
                yield return (new StagedPlace(wall.Identity.GlobalId, wall.Frame.PointAt(at, wall.Frame.Thickness + middle, default).Plan, along), s, away);
            }
        }
    }

    private static void Insert(STRtree<Polygon> tree, IEnumerable<Polygon> polygons)
    {
        foreach (var polygon in polygons)
        {
            tree.Insert(polygon.EnvelopeInternal, polygon);
        }
    }

    private bool IsFree(Polygon pack)
    {
        var (near, box) = (pack.EnvelopeInternal.Copy(), pack.EnvelopeInternal);
        near.ExpandBy(_data.Strip.Mm);
        return _walls.Query(near).All(wall => wall.Distance(pack) >= _data.Strip.Mm - Dust)
            && !_ways.Query(box).Any(pack.Intersects)
            && _packs.TrueForAll(other => other.Distance(pack) >= Between - Dust);
    }

    /// <summary>Whether walls stand on all four sides of each corner, here or a storey lower.</summary>
    private bool IsInside(ImmutableArray<Vector2> loop, Vector2 along)
    {
        const double Far = 1e6;
        Vector2[] ways = [along, along.Left, -along, -along.Left];
        return loop.All(corner => ways.All(way => Meets(PlanPolygon.Line(corner, corner + (way * Far)))));

        bool Meets(LineString line) => _around.Query(line.EnvelopeInternal).Any(line.Intersects);
    }

    /// <summary>Both ways through each opening that reaches the floor, as deep as packs reach.</summary>
    private IEnumerable<ImmutableArray<Vector2>> Ways(WallLayout wall)
    {
        var floor = wall.Courses.IsEmpty ? Length.Zero : wall.Courses[0].Top;
        foreach (var door in wall.Openings.Where(opening => opening.Interrupts && opening.Placed.Bottom < floor).Select(opening => opening.Placed))
        {
            Vector2 At(Length s, Length t) => wall.Frame.PointAt(s, t, default).Plan;
            yield return [At(door.Left, -_data.Reach), At(door.Left, wall.Frame.Thickness + _data.Reach), At(door.Right, wall.Frame.Thickness + _data.Reach), At(door.Right, -_data.Reach)];
        }
    }
}
