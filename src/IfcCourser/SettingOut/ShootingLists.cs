using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>
/// Lists where slabs are read: on both faces of every wall, as far as its first course stands, at ends, corners, jambs and tees, and between them
/// at most 8 ft (2.5 m) apart (common practice, no source). On the faces, so that whole blocks lie between readings.
/// </summary>
internal static class ShootingLists
{
    /// <summary>Points nearer to each other are read once.</summary>
    private const double Same = 50;

    /// <summary>Points of all storeys, the lowest first.</summary>
    /// <param name="layout">All its walls coursed.</param>
    /// <param name="first">Number of the first point.</param>
    public static ImmutableArray<ShootingPoint> Of(Layout layout, int first)
    {
        var points = new List<ShootingPoint>();
        var step = layout.Rules.Catalog.Units == UnitSystem.Inch ? Length.FromInches(96) : Length.FromMm(2500);
        foreach (var storey in layout.Walls.Where(wall => !wall.Courses.IsEmpty)
            .GroupBy(wall => wall.Identity.Storey, StringComparer.Ordinal)
            .OrderBy(storey => storey.Min(wall => wall.Frame.Origin.Z)).ThenBy(storey => storey.Key, StringComparer.Ordinal))
        {
            var here = new List<ShootingPoint>();
            foreach (var (wall, kind, s) in storey.SelectMany(wall => Stations(wall, layout, step).Select(station => (wall, station.Kind, station.S))))
            {
                foreach (var t in new[] { Length.Zero, wall.Frame.Thickness })
                {
                    var at = wall.Frame.PointAt(OnFace(wall, s, t), t, Length.Zero);
                    if (here.TrueForAll(point => (point.Point - at).Length > Same))
                    {
                        here.Add(new ShootingPoint(first + points.Count + here.Count, kind, storey.Key, wall.Identity.GlobalId, OnFace(wall, s, t), t, at));
                    }
                }
            }

            points.AddRange(here);
        }

        return [.. points];
    }

    private static IEnumerable<(ShootingPointKind Kind, Length S)> Stations(WallLayout wall, Layout layout, Length step)
    {
        foreach (var span in wall.Courses[0].Spans.Select(span => (span.Run, span.StartEdge, span.EndEdge)))
        {
            (ShootingPointKind Kind, Length S)[] known =
            [
                (Kind(wall, span.Run.From, span.StartEdge), span.Run.From),
                .. Tees(wall, layout).Where(s => s > span.Run.From && s < span.Run.To).Order().Select(s => (ShootingPointKind.Tee, s)),
                (Kind(wall, span.Run.To, span.EndEdge), span.Run.To),
            ];
            yield return known[0];
            foreach (var (before, here) in known.Zip(known.Skip(1)))
            {
                var parts = (here.S - before.S + step - new Length(1)) / step;
                for (var part = 1; part < parts; part++)
                {
                    yield return (ShootingPointKind.Between, before.S + ((here.S - before.S) * part / parts));
                }

                yield return here;
            }
        }
    }

    private static ShootingPointKind Kind(WallLayout wall, Length s, EdgeKind edge) => edge == EdgeKind.Jamb ? ShootingPointKind.Jamb
        : (s < wall.Frame.Length / 2 ? wall.Wall.Start : wall.Wall.End).Kind switch
        {
            EndKind.Corner => ShootingPointKind.Corner,
            EndKind.Tee or EndKind.Cross => ShootingPointKind.Tee,
            _ => ShootingPointKind.End,
        };

    /// <summary>Middles of the walls that end against this one.</summary>
    private static IEnumerable<Length> Tees(WallLayout wall, Layout layout)
    {
        if (wall.Frame.Curve is not null)
        {
            yield break;
        }

        foreach (var other in layout.Walls.Where(other => other.Frame.Curve is null))
        {
            foreach (var (end, s) in new[] { (other.Wall.Start, Length.Zero), (other.Wall.End, other.Frame.Length) })
            {
                if (end.Kind == EndKind.Tee && end.With.Any(with => string.Equals(layout.WallIds[with], wall.Identity.GlobalId, StringComparison.Ordinal)))
                {
                    var at = other.Frame.PointAt(s, other.Frame.Thickness / 2, Length.Zero).Plan - wall.Frame.Origin.Plan;
                    yield return Length.FromModelMm(Vector2.Dot(at, wall.Frame.Direction));
                }
            }
        }
    }

    // A run's end may be on a slant.
    private static Length OnFace(WallLayout wall, Length s, Length t)
    {
        var face = t == Length.Zero ? wall.Wall.LeftFace : wall.Wall.RightFace;
        return s == Length.Zero ? face.From : s == wall.Frame.Length ? face.To : s;
    }
}
