using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>A convex piece of a solid, bounded by faces that look outwards; mm.</summary>
public sealed class ConvexCell
{
    private ConvexCell(ImmutableArray<PlanarFace> faces)
    {
        Faces = faces;
        Box = Box3.Around(faces.SelectMany(face => face.Loop));
    }

    public ImmutableArray<PlanarFace> Faces { get; }

    public Box3 Box { get; }

    public IEnumerable<Vector3> Corners => Faces.SelectMany(face => face.Loop);

    /// <summary>A point inside: the mean of the corners.</summary>
    public Vector3 Middle
    {
        get
        {
            var (origin, sum, count) = (Faces[0].Loop[0], default(Vector3), 0);
            foreach (var corner in Corners)
            {
                sum += corner - origin;
                count++;
            }

            return origin + (sum * (1.0 / count));
        }
    }

    /// <summary>mm3, by the divergence theorem about a corner of the cell.</summary>
    public double Volume
    {
        get
        {
            var origin = Faces[0].Loop[0];
            return Faces.Sum(face => Vector3.Dot(face.Loop[0] - origin, face.AreaVector)) / 6;
        }
    }

    public static ConvexCell Of(Box3 box)
    {
        var (a, b) = (box.Min, box.Max);
        ImmutableArray<ImmutableArray<Vector3>> loops =
        [
            [new(a.X, a.Y, a.Z), new(a.X, b.Y, a.Z), new(b.X, b.Y, a.Z), new(b.X, a.Y, a.Z)],
            [new(a.X, a.Y, b.Z), new(b.X, a.Y, b.Z), new(b.X, b.Y, b.Z), new(a.X, b.Y, b.Z)],
            [new(a.X, a.Y, a.Z), new(b.X, a.Y, a.Z), new(b.X, a.Y, b.Z), new(a.X, a.Y, b.Z)],
            [new(a.X, b.Y, a.Z), new(a.X, b.Y, b.Z), new(b.X, b.Y, b.Z), new(b.X, b.Y, a.Z)],
            [new(a.X, a.Y, a.Z), new(a.X, a.Y, b.Z), new(a.X, b.Y, b.Z), new(a.X, b.Y, a.Z)],
            [new(b.X, a.Y, a.Z), new(b.X, b.Y, a.Z), new(b.X, b.Y, b.Z), new(b.X, a.Y, b.Z)],
        ];
        return new ConvexCell([.. loops.Select(PlanarFace.Around).OfType<PlanarFace>()]);
    }

    /// <summary>The cell under an affine map, or null where the map flattens it.</summary>
    public ConvexCell? Transformed(Transform3 map) => FromFaces(Faces.Select(face => face.Transformed(map)));

    /// <summary>The part behind the plane and the part before it; null where there is none.</summary>
    public (ConvexCell? Behind, ConvexCell? Before) Split(Plane3 plane)
    {
        var (least, largest) = Reach(plane);
        if (largest <= Plane3.Tolerance)
        {
            return (this, null);
        }

        if (least >= -Plane3.Tolerance)
        {
            return (null, this);
        }

        if (SectionOf(plane) is not { } section)
        {
            return largest > -least ? (null, this) : (this, null);
        }

        var parts = Faces.Select(face => face.Split(plane)).ToList();
        return (
            FromFaces(parts.Select(part => part.Behind).Append(section)),
            FromFaces(parts.Select(part => part.Before).Append(section.Reversed)));
    }

    /// <summary>Where the plane cuts the cell's inside, looking along the plane's normal; null where it does not.</summary>
    public PlanarFace? Section(Plane3 plane)
    {
        var (least, largest) = Reach(plane);
        return least < -Plane3.Tolerance && largest > Plane3.Tolerance ? SectionOf(plane) : null;
    }

    // Fewer than four faces enclose nothing: rounding's leftovers.
    private static ConvexCell? FromFaces(IEnumerable<PlanarFace?> faces)
    {
        ImmutableArray<PlanarFace> whole = [.. faces.OfType<PlanarFace>()];
        return whole.Length < 4 ? null : new ConvexCell(whole);
    }

    private (double Least, double Largest) Reach(Plane3 plane)
    {
        var (least, largest) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var face in Faces)
        {
            foreach (var point in face.Loop)
            {
                var distance = plane.Distance(point);
                least = Math.Min(least, distance);
                largest = Math.Max(largest, distance);
            }
        }

        return (least, largest);
    }

    private PlanarFace? SectionOf(Plane3 plane)
    {
        ImmutableArray<Vector3> onPlane =
        [
            .. Faces
                .SelectMany(face => face.Loop.Concat(face.Split(plane).Behind?.Loop ?? []))
                .Where(point => Math.Abs(plane.Distance(point)) <= Plane3.Tolerance),
        ];
        var (u, v) = plane.Axes();
        var hull = ConvexHull.Of([.. onPlane.Select(point => new Vector2(Vector3.Dot(u, point - onPlane[0]), Vector3.Dot(v, point - onPlane[0])))]);
        if (hull.Length < 3)
        {
            return null;
        }

        var face = new PlanarFace(plane, [.. hull.Select(index => onPlane[index])]);
        return face.IsSliver ? null : face;
    }
}
