using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;

namespace IfcCourser.Slabs;

/// <summary>A block of the first course as it stands on the slab.</summary>
/// <param name="Loop">Its underside in plan, convex, counter-clockwise, model axes, mm.</param>
/// <param name="Underside">As designed, model axes, mm.</param>
public sealed record FirstCourseBlock(WallLayout Wall, Piece Piece, ImmutableArray<Vector2> Loop, double Underside)
{
    /// <summary>As designed, model axes, mm.</summary>
    public double Top => Underside + Piece.Height.Mm;

    public Vector2 Middle => Loop.Aggregate(default(Vector2), (sum, corner) => sum + corner) * (1.0 / Loop.Length);

    /// <summary>Blocks of the first courses of walls, wall by wall, from left to right: those whose underside is the course's.</summary>
    public static ImmutableArray<FirstCourseBlock> Of(IEnumerable<WallLayout> walls) =>
    [
        .. walls.Where(wall => !wall.Courses.IsEmpty).SelectMany(wall => wall.Courses[0].Pieces
            .Where(piece => piece.Bottom == wall.Courses[0].Bottom)
            .Select(piece => new FirstCourseBlock(wall, piece, Footprint(wall, piece), wall.Frame.Origin.Z + piece.Bottom.Mm))
            .Where(block => new Facet([.. block.Loop.Select(corner => new SlabVertex(corner - block.Loop[0], 0))]).Area > 0)),
    ];

    /// <summary>Whether a place lies on it.</summary>
    /// <param name="dust">mm beside its edges that still count.</param>
    public bool Holds(Vector2 place, double dust)
    {
        for (var i = 0; i < Loop.Length; i++)
        {
            var (from, to) = (Loop[i], Loop[(i + 1) % Loop.Length]);
            if (Vector2.Cross((to - from).Unit(), place - from) < -dust)
            {
                return false;
            }
        }

        return true;
    }

    // A straight unit laid around a curve is straight: its four corners stand on the faces.
    private static ImmutableArray<Vector2> Footprint(WallLayout wall, Piece piece)
    {
        var (left, right) = (wall.Wall.LeftFace, wall.Wall.RightFace);
        var (isFirst, isLast) = (piece.From == default, piece.To == wall.Frame.Length);
        Vector2 At(Units.Length s, Units.Length t) => wall.Frame.PointAt(s, t, default).Plan;
        return
        [
            At(isFirst ? right.From : piece.From, wall.Frame.Thickness),
            At(isLast ? right.To : piece.To, wall.Frame.Thickness),
            At(isLast ? left.To : piece.To, default),
            At(isFirst ? left.From : piece.From, default),
        ];
    }
}
