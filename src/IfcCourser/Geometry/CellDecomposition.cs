using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>
/// Turns the boundary of a solid into convex cells: space is cut by the planes of the faces until no face is left
/// inside a cell (binary space partition); each cell is then wholly solid or wholly empty.
/// </summary>
public static class CellDecomposition
{
    private const int Candidates = 12;

    /// <summary>
    /// The cells that the faces surround, each with how often they do; edges need not match and faces may come in pieces, be a
    /// little out of plane or stick out like fins: what a cell is, the faces around it tell by their winding number, which is
    /// negative where they are turned inside out.
    /// </summary>
    public static ImmutableArray<(ConvexCell Cell, double Winding)> Surrounded(ImmutableArray<PlanarFace> faces)
    {
        const double Inside = 0.5;
        if (faces.IsEmpty)
        {
            return [];
        }

        var box = Box3.Around(faces.SelectMany(face => face.Loop));
        var cells = Divide(ConvexCell.Of(box.Grown(1)), faces);
        return [.. cells.Select(part => (part.Cell, Winding: WindingNumber.Of(faces, part.Cell.Middle))).Where(cell => Math.Abs(cell.Winding) > Inside)];
    }

    /// <summary>The part of a cell that lies behind faces which cut it cleanly, as the sides of a prism do.</summary>
    public static Solid Within(ConvexCell cell, ImmutableArray<PlanarFace> faces) =>
        new([.. Divide(cell, faces).Where(part => part.IsBehind).Select(part => part.Cell)]);

    // Cells that no face reaches into, and whether they lie behind the last face that bounds them.
    private static List<(ConvexCell Cell, bool IsBehind)> Divide(ConvexCell whole, ImmutableArray<PlanarFace> faces)
    {
        var cells = new List<(ConvexCell Cell, bool IsBehind)>();
        var open = new Stack<(ConvexCell Cell, ImmutableArray<PlanarFace> Faces)>();
        open.Push((whole, [.. faces.OrderByDescending(face => face.AreaVector.Length)]));
        while (open.TryPop(out var part))
        {
            var plane = DividingPlane(part.Faces);
            var (behindFaces, beforeFaces) = Divide(part.Faces, plane);
            var (behind, before) = part.Cell.Split(plane);
            Place(before, beforeFaces, isBehind: false);
            Place(behind, behindFaces, isBehind: true);
        }

        return cells;

        void Place(ConvexCell? cell, ImmutableArray<PlanarFace> inside, bool isBehind)
        {
            if (cell is not null && inside.IsEmpty)
            {
                cells.Add((cell, isBehind));
            }
            else if (cell is not null)
            {
                open.Push((cell, inside));
            }
        }
    }

    // The plane that cuts the fewest faces among the largest ones: small faces tell a plane less exactly.
    private static Plane3 DividingPlane(ImmutableArray<PlanarFace> faces)
    {
        var (best, fewest) = (faces[0].Plane, int.MaxValue);
        for (var i = 0; i < Math.Min(faces.Length, Candidates) && fewest > 0; i++)
        {
            var plane = faces[i].Plane;
            var cuts = faces.Count(face => Straddles(face, plane));
            if (cuts < fewest)
            {
                (best, fewest) = (plane, cuts);
            }
        }

        return best;
    }

    private static bool Straddles(PlanarFace face, Plane3 plane)
    {
        var (behind, before) = (false, false);
        foreach (var point in face.Loop)
        {
            var distance = plane.Distance(point);
            behind |= distance < -Plane3.Tolerance;
            before |= distance > Plane3.Tolerance;
        }

        return behind && before;
    }

    private static (ImmutableArray<PlanarFace> Behind, ImmutableArray<PlanarFace> Before) Divide(ImmutableArray<PlanarFace> faces, Plane3 plane)
    {
        var behind = ImmutableArray.CreateBuilder<PlanarFace>();
        var before = ImmutableArray.CreateBuilder<PlanarFace>();
        foreach (var face in faces.Where(face => !LiesIn(face, plane)))
        {
            var (back, front) = face.Split(plane);
            if (back is { IsSliver: false })
            {
                behind.Add(back);
            }

            if (front is { IsSliver: false })
            {
                before.Add(front);
            }
        }

        return (behind.ToImmutable(), before.ToImmutable());
    }

    // A face of a model may be a little out of plane; in its own plane it lies all the same.
    private static bool LiesIn(PlanarFace face, Plane3 plane) =>
        face.Plane == plane || face.Loop.All(point => Math.Abs(plane.Distance(point)) <= Plane3.Tolerance);
}
