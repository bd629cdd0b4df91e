using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>The pair of parallel upright faces that make a body a straight wall: those of the largest area.</summary>
/// <param name="Direction">Of the faces in plan, a unit vector.</param>
/// <param name="Across">Offsets of the right and the left face to the left of the body's origin, mm.</param>
public sealed record UprightFaces(Vector2 Direction, Slab Across)
{
    /// <summary>Faces within this sine of each other are parallel.</summary>
    private const double Parallel = 0.004;

    /// <summary>Offsets within this many mm are one face.</summary>
    private const double SameFace = 1;

    /// <summary>Faces smaller than this share of the largest are steps, stubs and copings, not the wall's faces.</summary>
    private const double MainShare = 0.3;

    /// <summary>Finds the faces: parallel to the longest edges of the footprint, where the body has the most upright area.</summary>
    /// <param name="body">In coordinates near it, axes as in the model.</param>
    /// <param name="hint">Direction of the wall's axis: decides which way the run goes, and between sides of equal length.</param>
    /// <returns>Null where no edges are parallel or others outweigh them, as on round and curved bodies, or no face is upright.</returns>
    public static UprightFaces? Of(Solid body, Vector2 hint)
    {
        ImmutableArray<Vector2> edges = [.. Projection.Plan(body).Parts.SelectMany(part => Edges(part.Outline)).Where(edge => edge.Length > SameFace)];
        if (edges.IsEmpty)
        {
            return null;
        }

        var longest = edges.Max(edge => Total(edges, edge));
        var main = edges
            .Where(edge => Total(edges, edge) >= longest * 0.999)
            .OrderByDescending(edge => Math.Round(Math.Abs(Vector2.Dot(edge.Unit(), hint)), 3))
            .ThenByDescending(edge => edge.Length)
            .First()
            .Unit();
        var sides = Sides(body);
        var faces = longest >= edges.Sum(edge => edge.Length) * MainShare ? Between(sides, Headed(main, hint)) : null;
        return faces ?? Short(sides, hint);
    }

    /// <summary>Whether one of a wall's two faces, or both, lean: more than a quarter of what is neither floor nor top.</summary>
    public static bool Lean(Solid body)
    {
        const double OneFace = 0.25;
        var sides = Sides(body);
        return sides.Where(side => !side.IsUpright).Sum(side => side.Area) > sides.Sum(side => side.Area) * OneFace;
    }

    private static UprightFaces? Between(List<Side> sides, Vector2 direction)
    {
        var parallel = sides.Where(side => side.IsUpright && IsParallel(side.Direction, direction)).ToList();
        var least = parallel.Select(side => side.Area).DefaultIfEmpty().Max() * MainShare;
        var offsets = parallel.Where(side => side.Area >= least).Select(side => Vector2.Dot(side.Point, direction.Left)).ToList();
        return offsets.Count > 0 && offsets.Max() - offsets.Min() > SameFace ? new UprightFaces(direction, new Slab(offsets.Min(), offsets.Max())) : null;
    }

    // A stub may be longer across than along: then the hint tells its faces, if they are a good part of the body's sides.
    private static UprightFaces? Short(List<Side> sides, Vector2 hint)
    {
        const double GoodPart = 0.25;
        var along = sides.Where(side => side.IsUpright && IsParallel(side.Direction, hint)).Sum(side => side.Area);
        return hint.Length > 0 && along >= GoodPart * sides.Sum(side => side.Area) ? Between(sides, hint) : null;
    }

    private static Vector2 Headed(Vector2 direction, Vector2 hint)
    {
        const double Square = 1e-3;
        var along = Vector2.Dot(direction, hint);
        var isBackwards = Math.Abs(along) > Square ? along < 0 : direction.X < -Square || (direction.X < Square && direction.Y < 0);
        return isBackwards ? -direction : direction;
    }

    private static IEnumerable<Vector2> Edges(ImmutableArray<Vector2> loop) => loop.Select((from, i) => loop[(i + 1) % loop.Length] - from);

    private static double Total(ImmutableArray<Vector2> edges, Vector2 along) =>
        edges.Where(edge => IsParallel(edge.Unit(), along.Unit())).Sum(edge => edge.Length);

    private static bool IsParallel(Vector2 a, Vector2 b) => Math.Abs(Vector2.Cross(a, b)) <= Parallel;

    // The body's faces plane by plane; where two cells touch, their faces look at each other and cancel.
    private static List<Side> Sides(Solid body)
    {
        const double Flat = 0.9;
        const double Upright = 0.01;
        var sides = new List<Side>();
        foreach (var face in body.Cells.SelectMany(cell => cell.Faces).Where(face => Math.Abs(face.Plane.Normal.Z) < Flat))
        {
            var (normal, point, area) = (face.Plane.Normal, face.Loop[0], face.AreaVector.Length / 2);
            var known = sides.FindIndex(side => side.Holds(normal, point));
            if (known < 0)
            {
                sides.Add(new Side(normal, point, area, Math.Abs(normal.Z) <= Upright));
            }
            else
            {
                sides[known] = sides[known] with { Net = sides[known].Net + (Vector3.Dot(normal, sides[known].Normal) > 0 ? area : -area) };
            }
        }

        return sides;
    }

    private readonly record struct Side(Vector3 Normal, Vector3 At, double Net, bool IsUpright)
    {
        public double Area => Math.Abs(Net);

        public Vector2 Point => At.Plan;

        public Vector2 Direction => -Normal.Plan.Unit().Left;

        public bool Holds(Vector3 normal, Vector3 point) =>
            Vector3.Cross(Normal, normal).Length <= Parallel && Math.Abs(Vector3.Dot(Normal, point - At)) <= SameFace;
    }
}
