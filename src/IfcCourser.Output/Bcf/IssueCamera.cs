using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Bcf;

/// <summary>A perspective camera in the model's world axes, metres (BCF 3.0, visinfo.xsd, PerspectiveCamera).</summary>
/// <param name="At">Where it stands.</param>
/// <param name="Towards">Unit vector.</param>
/// <param name="Up">Unit vector.</param>
internal sealed record IssueCamera(Vector3 At, Vector3 Towards, Vector3 Up)
{
    /// <summary>Vertical field of view in degrees: BCF 2.1 allows 45 to 60 (visinfo.xsd, FieldOfView).</summary>
    public const double FieldOfView = 60;

    /// <summary>Width to height.</summary>
    public const double AspectRatio = 1.6;

    private const double MmPerMetre = 1000;

    /// <summary>Shown around an opening, on every side.</summary>
    private const double AroundMm = 1000;

    /// <summary>The camera stands no nearer to the face than this.</summary>
    private const double LeastMm = 2000;

    private static readonly double _tangent = Math.Tan(FieldOfView / 2 * Math.PI / 180);

    /// <summary>
    /// Facing the opening, or the whole wall, squarely: on the right face, from which elevations are drawn; on the left one where another wall stands nearer
    /// on the right than the camera has to go and the left side is freer.
    /// </summary>
    public static IssueCamera Facing(Layout layout, WallLayout wall, OpeningLayout? opening)
    {
        var rect = opening?.Placed ?? Around(wall);
        var margin = opening is null ? AroundMm / 2 : AroundMm;
        var distance = Math.Max(LeastMm, Distance(rect.Width.Mm + (2 * margin), rect.Height.Mm + (2 * margin)));
        var (s, z) = ((rect.Left + rect.Right) / 2, (rect.Bottom + rect.Top) / 2);
        var (left, right) = (wall.Frame.PointAt(s, Length.Zero, z), wall.Frame.PointAt(s, wall.Frame.Thickness, z));
        var outwards = (right.Plan - left.Plan) * (1 / wall.Frame.Thickness.Mm);
        var (freeRight, freeLeft) = (Free(layout, wall, right, outwards), Free(layout, wall, left, outwards * -1));
        return freeRight >= distance || freeRight >= freeLeft ? Looking(right, outwards, distance) : Looking(left, outwards * -1, distance);
    }

    /// <summary>Facing a box along the axis that shows its longer side, from the side of the lesser coordinates.</summary>
    public static IssueCamera Facing(Vector3 min, Vector3 max)
    {
        var (x, y, height) = (max.X - min.X, max.Y - min.Y, max.Z - min.Z);
        var outwards = x >= y ? new Vector2(0, -1) : new Vector2(-1, 0);
        var middle = new Vector3(x >= y ? (min.X + max.X) / 2 : min.X, x >= y ? min.Y : (min.Y + max.Y) / 2, (min.Z + max.Z) / 2);
        return Looking(middle, outwards, Math.Max(LeastMm, Distance(Math.Max(x, y) + AroundMm, height + AroundMm)));
    }

    /// <summary>From how far a rectangle is seen whole, millimetres.</summary>
    private static double Distance(double width, double height) => Math.Max(height / 2 / _tangent, width / 2 / (_tangent * AspectRatio));

    private static IssueCamera Looking(Vector3 at, Vector2 outwards, double distance) => new(
        new Vector3((at.X + (outwards.X * distance)) / MmPerMetre, (at.Y + (outwards.Y * distance)) / MmPerMetre, at.Z / MmPerMetre),
        new Vector3(-outwards.X, -outwards.Y, 0),
        new Vector3(0, 0, 1));

    private static ElevationRect Around(WallLayout wall) => new(
        wall.Outline.Select(p => p.S).Min(), wall.Outline.Select(p => p.S).Max(), wall.Outline.Select(p => p.Z).Min(), wall.Outline.Select(p => p.Z).Max());

    /// <summary>How far it is from a face, straight out, to the next wall at that height, millimetres.</summary>
    private static double Free(Layout layout, WallLayout wall, Vector3 from, Vector2 outwards)
    {
        var nearest = double.MaxValue;
        foreach (var other in layout.Walls.Where(other => other != wall && other.Frame.Origin.Z <= from.Z && other.Frame.Origin.Z + other.Outline.Max(p => p.Z).Mm >= from.Z))
        {
            var corners = other.Wall.Footprint();
            for (var i = 0; i < corners.Length; i++)
            {
                var (a, b) = (corners[i] - from.Plan, corners[(i + 1) % corners.Length] - from.Plan);
                var (sideA, sideB) = (Vector2.Cross(outwards, a), Vector2.Cross(outwards, b));
                if (sideA <= 0 != sideB <= 0)
                {
                    var hit = a + ((b - a) * (sideA / (sideA - sideB)));
                    var way = Vector2.Dot(hit, outwards);
                    nearest = way > 0 ? Math.Min(nearest, way) : nearest;
                }
            }
        }

        return nearest;
    }
}
