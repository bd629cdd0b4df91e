using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>Turns faces that some programs write with mixed winding the same way round.</summary>
public static class FaceOrientation
{
    /// <summary>Corners in the same cube of this size, mm, are one.</summary>
    private const double SameCorner = 0.01;

    /// <summary>Areas whose vectors cancel to this share close; then nothing needs turning.</summary>
    private const double Closed = 1e-3;

    /// <summary>The faces, each turned so that it runs along every shared edge against its neighbour.</summary>
    public static ImmutableArray<PlanarFace> Unified(ImmutableArray<PlanarFace> faces)
    {
        var sum = faces.Aggregate(default(Vector3), (total, face) => total + face.AreaVector);
        if (faces.IsEmpty || sum.Length <= Closed * faces.Sum(face => face.AreaVector.Length))
        {
            return faces;
        }

        var origin = faces[0].Loop[0];
        var edges = faces
            .SelectMany((face, index) => Edges(face, origin).Select(edge => (edge.From, edge.To, Index: index)))
            .ToLookup(edge => Key(edge.From, edge.To));
        var turned = new bool?[faces.Length];
        var open = new Queue<int>();
        for (var start = 0; start < faces.Length; start++)
        {
            if (turned[start] is null)
            {
                turned[start] = false;
                open.Enqueue(start);
            }

            while (open.TryDequeue(out var index))
            {
                foreach (var (from, to) in Edges(faces[index], origin))
                {
                    foreach (var other in edges[Key(from, to)].Where(edge => edge.Index != index && turned[edge.Index] is null))
                    {
                        turned[other.Index] = (other.From == from) != turned[index];
                        open.Enqueue(other.Index);
                    }
                }
            }
        }

        return [.. faces.Select((face, i) => turned[i] is true ? face.Reversed : face)];
    }

    private static IEnumerable<(Corner From, Corner To)> Edges(PlanarFace face, Vector3 origin)
    {
        for (var i = 0; i < face.Loop.Length; i++)
        {
            yield return (Corner.Of(face.Loop[i] - origin), Corner.Of(face.Loop[(i + 1) % face.Loop.Length] - origin));
        }
    }

    private static (Corner, Corner) Key(Corner a, Corner b) => (a.X, a.Y, a.Z).CompareTo((b.X, b.Y, b.Z)) <= 0 ? (a, b) : (b, a);

    private readonly record struct Corner(long X, long Y, long Z)
    {
        public static Corner Of(Vector3 p) =>
            new((long)Math.Round(p.X / SameCorner), (long)Math.Round(p.Y / SameCorner), (long)Math.Round(p.Z / SameCorner));
    }
}
