using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>
/// Turns the boundary of a solid into convex cells: space is cut by the planes of the faces until no face is left
/// inside a cell; what then lies behind the last face is solid, what lies before it is not (binary space partition).
/// </summary>
public static class CellDecomposition
{
    private const int Candidates = 12;

    /// <summary>The space behind the faces; edges need not match and faces may be cut in pieces, but they must close.</summary>
    public static Solid Of(ImmutableArray<PlanarFace> faces)
    {
        if (faces.IsEmpty)
        {
            return Solid.Empty;
        }

        var box = Box3.Around(faces.SelectMany(face => face.Loop));
        return Within(ConvexCell.Of(box.Grown(1)), faces);
    }

    /// <summary>The part of a cell that lies behind the faces.</summary>
    public static Solid Within(ConvexCell cell, ImmutableArray<PlanarFace> faces)
    {
        var solid = ImmutableArray.CreateBuilder<ConvexCell>();
        var open = new Stack<(ConvexCell Cell, ImmutableArray<PlanarFace> Faces)>();
        open.Push((cell, faces));
        while (open.TryPop(out var part))
        {
            var plane = DividingPlane(part.Faces);
            var (behindFaces, beforeFaces) = Divide(part.Faces, plane);
            var (behind, before) = part.Cell.Split(plane);
            if (before is not null && !beforeFaces.IsEmpty)
            {
                open.Push((before, beforeFaces));
            }

            if (behind is null)
            {
                continue;
            }

            if (behindFaces.IsEmpty)
            {
                solid.Add(behind);
            }
            else
            {
                open.Push((behind, behindFaces));
            }
        }

        return new Solid(solid.ToImmutable());
    }

    // The plane among a few evenly spread ones that cuts the fewest faces.
    private static Plane3 DividingPlane(ImmutableArray<PlanarFace> faces)
    {
        var step = Math.Max(1, faces.Length / Candidates);
        var (best, fewest) = (faces[0].Plane, int.MaxValue);
        for (var i = 0; i < faces.Length && fewest > 0; i += step)
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
            if (back is not null)
            {
                behind.Add(back);
            }

            if (front is not null)
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
