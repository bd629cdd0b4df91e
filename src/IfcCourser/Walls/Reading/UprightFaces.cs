using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>The pair of parallel faces that make a body a straight wall, found from its footprint.</summary>
/// <param name="Direction">Of the faces in plan, a unit vector.</param>
/// <param name="Across">Offsets of the right and the left face to the left of the footprint's origin, mm.</param>
public sealed record UprightFaces(Vector2 Direction, Slab Across)
{
    /// <summary>Edges within this sine of each other are parallel.</summary>
    private const double Parallel = 0.004;

    /// <summary>Offsets within this many mm are one face.</summary>
    private const double SameFace = 1;

    /// <summary>Faces shorter than this share of the longest are steps or stubs, not the wall's faces.</summary>
    private const double MainShare = 0.3;

    /// <summary>Finds the faces.</summary>
    /// <param name="footprint">The body seen from above, in coordinates near it.</param>
    /// <param name="hint">Direction of the wall's axis: decides which way the run goes, and between sides of equal length.</param>
    /// <returns>Null where no two faces are parallel, as on round or curved bodies.</returns>
    public static UprightFaces? Of(Region footprint, Vector2 hint)
    {
        var edges = Edges(footprint).Where(edge => edge.Length > SameFace).ToImmutableArray();
        if (edges.IsEmpty)
        {
            return null;
        }

        var longest = edges.Max(edge => Total(edges, edge.Direction));
        var main = edges
            .Where(edge => Total(edges, edge.Direction) >= longest * 0.999)
            .OrderByDescending(edge => Math.Round(Math.Abs(Vector2.Dot(edge.Direction, hint)), 3))
            .ThenByDescending(edge => edge.Length)
            .First()
            .Direction;
        var along = Vector2.Dot(main, hint);
        var direction = along < -1e-3 || (Math.Abs(along) <= 1e-3 && (main.X < -1e-9 || (Math.Abs(main.X) <= 1e-9 && main.Y < 0))) ? -main : main;
        return longest >= edges.Sum(edge => edge.Length) * MainShare ? OfParallel(edges, direction) : null;
    }

    private static UprightFaces? OfParallel(ImmutableArray<Edge> edges, Vector2 direction)
    {
        var parallel = edges.Where(edge => IsParallel(edge.Direction, direction)).ToList();
        double Offset(Edge edge) => Vector2.Dot(edge.Middle, direction.Left);
        double LengthOf(double offset) => parallel.Where(edge => Math.Abs(Offset(edge) - offset) <= SameFace).Sum(edge => edge.Length);
        var mainLength = parallel.Max(edge => LengthOf(Offset(edge))) * MainShare;
        var offsets = parallel.Select(Offset).Where(offset => LengthOf(offset) >= mainLength).ToList();
        var across = new Slab(offsets.Min(), offsets.Max());
        return across.Size > SameFace ? new UprightFaces(direction, across) : null;
    }

    private static double Total(ImmutableArray<Edge> edges, Vector2 direction) =>
        edges.Where(edge => IsParallel(edge.Direction, direction)).Sum(edge => edge.Length);

    private static bool IsParallel(Vector2 a, Vector2 b) => Math.Abs(Vector2.Cross(a, b)) <= Parallel;

    private static IEnumerable<Edge> Edges(Region footprint) => footprint.Parts.SelectMany(part =>
    {
        var loop = part.Outline;
        return loop.Select((from, i) => new Edge(from, loop[(i + 1) % loop.Length]));
    });

    private readonly record struct Edge(Vector2 From, Vector2 To)
    {
        public double Length => (To - From).Length;

        public Vector2 Direction => (To - From).Unit();

        public Vector2 Middle => (From + To) * 0.5;
    }
}
