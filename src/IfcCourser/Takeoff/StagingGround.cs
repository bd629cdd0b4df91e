using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using NetTopologySuite.Index.Strtree;

namespace IfcCourser.Takeoff;

/// <summary>Room for packs on a storey: clear of every wall by the working strip, of the ways through doors, and of each other.</summary>
internal sealed class StagingGround
{
    /// <summary>mm between packs, for forks and straps. Common practice, no source.</summary>
    private const double Between = 100;

    /// <summary>mm: how finely places along a wall are tried, one of up to <see cref="MostSteps"/> steps.</summary>
    private const double Step = 100;
    private const double MostSteps = 10_000;

    private const double Dust = 1e-3;

    private readonly StagingData _data;
    private readonly bool _isOnGround;
    private readonly STRtree<Polygon> _walls = new();
    private readonly STRtree<IPreparedGeometry> _around = new();
    private readonly STRtree<IPreparedGeometry> _ways = new();

    /// <summary>By wall, what is still free beside it; packs only ever take from it.</summary>
    private readonly Dictionary<string, List<Spot>> _free = new(StringComparer.Ordinal);
    private readonly List<Polygon> _packs = [];

    /// <param name="walls">Of the storey.</param>
    /// <param name="below">Of the storey under it, between which its slab lies; null on the ground, where packs may stand outside as well.</param>
    public StagingGround(IReadOnlyCollection<WallLayout> walls, IReadOnlyCollection<WallLayout>? below, StagingData data)
    {
        (_data, _isOnGround) = (data, below is null);
        Insert(_walls, walls.SelectMany(wall => WallSequence.Polygons(wall)), polygon => polygon);
        Insert(_around, walls.Concat(below ?? []).SelectMany(wall => WallSequence.Polygons(wall)), PreparedGeometryFactory.Prepare);
        Insert(_ways, walls.SelectMany(Ways).Select(PlanPolygon.Of), PreparedGeometryFactory.Prepare);
    }

    /// <summary>The place beside a wall nearest to a share of its length, inside the walls rather than outside; null where there is none.</summary>
    public StagedPlace? Place(WallLayout wall, double share)
    {
        var target = wall.Frame.Length.Mm * share;
        if (FreeBeside(wall).MinBy(spot => (spot.IsInside ? 0 : 1, Math.Abs(spot.S - target) + (2 * spot.Away))) is not { } taken)
        {
            return null;
        }

        _packs.Add(taken.Pack);
        foreach (var spots in _free.Values)
        {
            spots.RemoveAll(spot => IsTooNear(spot.Pack, taken.Pack));
        }

        return taken.Place;
    }

    private List<Spot> FreeBeside(WallLayout wall)
    {
        if (!_free.TryGetValue(wall.Identity.GlobalId, out var spots))
        {
            _free[wall.Identity.GlobalId] = spots = [.. Places(wall)
                .Select(place => (place, Loop: place.Place.Loop(_data)))
                .Select(place => (place.place, place.Loop, Pack: PlanPolygon.Of(place.Loop)))
                .Where(place => IsClear(place.Pack) && _packs.TrueForAll(other => !IsTooNear(place.Pack, other)))
                .Select(place => new Spot(place.place.Place, place.place.S, place.place.Away, IsInside(place.Loop, place.place.Place.Along), place.Pack))
                .Where(spot => _isOnGround || spot.IsInside)];
        }

        return spots;
    }

    private IEnumerable<(StagedPlace Place, double S, double Away)> Places(WallLayout wall)
    {
        var (length, half) = (wall.Frame.Length.Mm, Math.Min(wall.Frame.Length.Mm, _data.PackLength.Mm) / 2);
        for (var s = half; s <= length - half + Dust; s += Math.Max(Step, length / MostSteps))
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

    private static void Insert<T>(STRtree<T> tree, IEnumerable<Polygon> polygons, Func<Polygon, T> kept)
    {
        foreach (var polygon in polygons)
        {
            tree.Insert(polygon.EnvelopeInternal, kept(polygon));
        }
    }

    /// <summary>Clear of walls and of ways.</summary>
    private bool IsClear(Polygon pack)
    {
        var (near, box) = (pack.EnvelopeInternal.Copy(), pack.EnvelopeInternal);
        near.ExpandBy(_data.Strip.Mm);
        return _walls.Query(near).All(wall => wall.Distance(pack) >= _data.Strip.Mm - Dust)
            && !_ways.Query(box).Any(way => way.Intersects(pack));
    }

    private static bool IsTooNear(Polygon pack, Polygon other) =>
        pack.EnvelopeInternal.Distance(other.EnvelopeInternal) < Between - Dust && pack.Distance(other) < Between - Dust;

    /// <summary>Whether walls stand on all four sides of each corner, here or a storey lower.</summary>
    private bool IsInside(ImmutableArray<Vector2> loop, Vector2 along)
    {
        const double Far = 1e6;
        Vector2[] ways = [along, along.Left, -along, -along.Left];
        return loop.All(corner => ways.All(way => Meets(PlanPolygon.Line(corner, corner + (way * Far)))));

        bool Meets(LineString line) => _around.Query(line.EnvelopeInternal).Any(wall => wall.Intersects(line));
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

    /// <summary>A place clear of walls and ways, <paramref name="S"/> mm along its wall and <paramref name="Away"/> mm off its face.</summary>
    private sealed record Spot(StagedPlace Place, double S, double Away, bool IsInside, Polygon Pack);
}
