using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>A plane piece of a slab's top between three readings, mm.</summary>
public readonly record struct SlabTriangle(SlabVertex A, SlabVertex B, SlabVertex C)
{
    /// <summary>mm2, of a counter-clockwise triangle.</summary>
    public double Area => Vector2.Cross(B.Plan - A.Plan, C.Plan - A.Plan) / 2;

    /// <summary>Counter-clockwise from its least corner, so that equal triangles are equal values.</summary>
    public SlabTriangle CounterClockwise()
    {
        var (a, b, c) = Area < 0 ? (A, C, B) : (A, B, C);
        return Precedes(a, b) && Precedes(a, c) ? new(a, b, c) : Precedes(b, c) ? new(b, c, a) : new(c, a, b);
    }

    /// <summary>The plane's height at a place, inside or not.</summary>
    public double At(Vector2 place)
    {
        var whole = Vector2.Cross(B.Plan - A.Plan, C.Plan - A.Plan);
        var (b, c) = (Vector2.Cross(place - A.Plan, C.Plan - A.Plan) / whole, Vector2.Cross(B.Plan - A.Plan, place - A.Plan) / whole);
        return A.Value + (b * (B.Value - A.Value)) + (c * (C.Value - A.Value));
    }

    /// <summary>The place itself where it lies inside, else the nearest one on the edges.</summary>
    public Vector2 Nearest(Vector2 place)
    {
        if (IsLeft(A, B, place) && IsLeft(B, C, place) && IsLeft(C, A, place))
        {
            return place;
        }

        return new[] { OnEdge(A, B, place), OnEdge(B, C, place), OnEdge(C, A, place) }.MinBy(at => (at - place).Length);
    }

    private static bool IsLeft(SlabVertex from, SlabVertex to, Vector2 place) => Vector2.Cross(to.Plan - from.Plan, place - from.Plan) >= 0;

    private static Vector2 OnEdge(SlabVertex from, SlabVertex to, Vector2 place)
    {
        var along = to.Plan - from.Plan;
        return from.Plan + (along * Math.Clamp(Vector2.Dot(place - from.Plan, along) / Vector2.Dot(along, along), 0, 1));
    }

    private static bool Precedes(SlabVertex a, SlabVertex b) => a.Plan.X < b.Plan.X || (a.Plan.X == b.Plan.X && a.Plan.Y < b.Plan.Y);
}
