using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>A plane figure: closed loops of points in mm without repeating the first; those inside others are holes.</summary>
public sealed record Profile(ImmutableArray<ImmutableArray<Vector2>> Loops)
{
    /// <summary>A figure from its outer loop and its holes, whichever way they run.</summary>
    public static Profile Of(ImmutableArray<Vector2> outer, IEnumerable<ImmutableArray<Vector2>> holes) =>
        new([Turned(outer, counterClockwise: true), .. holes.Select(hole => Turned(hole, counterClockwise: false))]);

    /// <summary>The solid swept by the figure, placed in space by a map, along a direction; empty where either is flat.</summary>
    /// <param name="place">Takes the figure's plane (z = 0) to space.</param>
    /// <param name="sweep">From the first cap to the last, in space, mm.</param>
    public Solid Extruded(Transform3 place, Vector3 sweep)
    {
        var normal = Vector3.Cross(place.X, place.Y);
        var depth = Vector3.Dot(normal.Unit(), sweep);
        if (Math.Abs(depth) <= Plane3.Tolerance || Loops.IsEmpty)
        {
            return Solid.Empty;
        }

        if (depth < 0)
        {
            return Extruded(place with { Origin = place.Origin + sweep }, -sweep);
        }

        var foot = Plane3.Through(place.Origin, normal);
        var head = Plane3.Through(place.Origin + sweep, normal);
        ImmutableArray<PlanarFace> sides = [.. Loops.SelectMany(loop => Sides(loop, place, sweep)).OfType<PlanarFace>()];
        var box = ConvexCell.Of(Box3.Around(sides.SelectMany(face => face.Loop)).Grown(1));
        var slab = box.Split(head).Behind?.Split(foot).Before;
        return slab is null || sides.IsEmpty ? Solid.Empty : CellDecomposition.Within(slab, sides);
    }

    private static IEnumerable<PlanarFace?> Sides(ImmutableArray<Vector2> loop, Transform3 place, Vector3 sweep)
    {
        for (var i = 0; i < loop.Length; i++)
        {
            var (from, to) = (loop[i], loop[(i + 1) % loop.Length]);
            var a = place.Point(new Vector3(from.X, from.Y, 0));
            var b = place.Point(new Vector3(to.X, to.Y, 0));
            yield return PlanarFace.Around([a, b, b + sweep, a + sweep]);
        }
    }

    private static ImmutableArray<Vector2> Turned(ImmutableArray<Vector2> loop, bool counterClockwise) =>
        SignedArea(loop) > 0 == counterClockwise ? loop : [.. loop.Reverse()];

    private static double SignedArea(ImmutableArray<Vector2> loop)
    {
        var sum = 0.0;
        for (var i = 1; i + 1 < loop.Length; i++)
        {
            sum += Vector2.Cross(loop[i] - loop[0], loop[i + 1] - loop[0]);
        }

        return sum / 2;
    }
}
