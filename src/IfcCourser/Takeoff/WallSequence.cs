using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using NetTopologySuite.Geometries;

namespace IfcCourser.Takeoff;

/// <summary>Walls of a storey one after another, so that the next one touches or lies near.</summary>
internal static class WallSequence
{
    /// <summary>From the wall first in the model, each time the nearest that is left; of several that touch the one whose middle is nearest.</summary>
    public static ImmutableArray<WallLayout> Of(IEnumerable<WallLayout> walls)
    {
        var left = walls.OrderBy(wall => wall.Identity.StepId).ToList();
        var sequence = ImmutableArray.CreateBuilder<WallLayout>();
        while (left.Count > 0)
        {
            var next = sequence.Count == 0 ? left[0] : Nearest(sequence[^1], left).First();
            sequence.Add(next);
            left.Remove(next);
        }

        return sequence.ToImmutable();
    }

    /// <summary>The other walls, the nearest first.</summary>
    public static IEnumerable<WallLayout> Nearest(WallLayout wall, IEnumerable<WallLayout> walls) => walls
        .Where(other => other != wall).OrderBy(other => Distance(wall, other)).ThenBy(other => (Middle(wall) - Middle(other)).Length).ThenBy(other => other.Identity.StepId);

    /// <summary>What a wall covers in plan, model axes, mm; a curve in chords.</summary>
    public static ImmutableArray<Polygon> Polygons(WallLayout wall)
    {
        const int ChordsOfCurve = 12;
        var (left, right) = (wall.Wall.LeftFace, wall.Wall.RightFace);
        var count = wall.Frame.Curve is null ? 1 : ChordsOfCurve;
        Vector2 At(Interval face, int i, Length t) => wall.Frame.PointAt(face.From + ((face.To - face.From) / count * i), t, default).Plan;
        return
        [
            .. Enumerable.Range(0, count).Select(i => PlanPolygon.Of(
                [At(right, i, wall.Frame.Thickness), At(right, i + 1, wall.Frame.Thickness), At(left, i + 1, default), At(left, i, default)])),
        ];
    }

    private static double Distance(WallLayout a, WallLayout b) => Polygons(a).Min(one => Polygons(b).Min(other => one.Distance(other)));

    private static Vector2 Middle(WallLayout wall) => wall.Frame.PointAt(wall.Frame.Length / 2, wall.Frame.Thickness / 2, default).Plan;
}
