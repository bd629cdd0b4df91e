using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>What a solid looks like in plan and, where its x runs along a wall and its y across, in elevation.</summary>
public static class Projection
{
    /// <summary>The footprint: everything seen from above, x and y.</summary>
    public static Region Plan(Solid solid) => Silhouette(solid.Cells, point => point.Plan);

    /// <summary>Everything seen from the front of what lies between two y, as x and z.</summary>
    public static Region Elevation(Solid solid, double from, double to) =>
        Silhouette(solid.Behind(Before(to)).Behind(Before(from).Reversed).Cells, Front);

    /// <summary>What a solid shows in the upright plane at a y, as x and z: its faces there that look to one side, and the cut of what goes on.</summary>
    /// <param name="side">1 for faces that look towards larger y, -1 for the others.</param>
    public static Region Face(Solid solid, double y, int side)
    {
        var faces = solid.Cells.SelectMany(cell => cell.Faces)
            .Where(face => face.Plane.Normal.Y * side > 0 && face.Loop.All(point => Math.Abs(point.Y - y) <= Plane3.Tolerance));
        return Region.Of(faces.Select(face => Hull(face.Loop.Select(Front)))).Union(Section(solid, y));
    }

    /// <summary>The cut by the upright plane at a y, as x and z.</summary>
    public static Region Section(Solid solid, double y) =>
        Region.Of(solid.Cells.Select(cell => cell.Section(Before(y))).OfType<PlanarFace>().Select(face => Hull(face.Loop.Select(Front))));

    private static Plane3 Before(double y) => new(new Vector3(0, 1, 0), y);

    private static Vector2 Front(Vector3 point) => new(point.X, point.Z);

    private static Region Silhouette(IEnumerable<ConvexCell> cells, Func<Vector3, Vector2> see) =>
        Region.Of(cells.Select(cell => Hull(cell.Corners.Select(see))));

    private static ImmutableArray<Vector2> Hull(IEnumerable<Vector2> points)
    {
        ImmutableArray<Vector2> all = [.. points];
        return [.. ConvexHull.Of(all).Select(index => all[index])];
    }
}
