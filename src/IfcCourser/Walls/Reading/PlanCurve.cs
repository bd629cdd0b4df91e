using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>
/// A bend of a body of one thickness around a circle in plan; unrolled, x runs along its centre line and y to the left of
/// it, as in the coordinates of a straight wall.
/// </summary>
/// <param name="Centre">Of the circle, mm.</param>
/// <param name="Radius">Of the body's centre line, mm.</param>
/// <param name="Thickness">Of the body, mm.</param>
/// <param name="From">Where the run starts, seen from the centre, radians.</param>
/// <param name="Turn">What the run turns, radians; positive to the left.</param>
/// <param name="IsWhole">Whether the body is nothing but this bend.</param>
public sealed record PlanCurve(Vector2 Centre, double Radius, double Thickness, double From, double Turn, bool IsWhole)
{
    /// <summary>Bends by less than this, radians (1 degree), are none.</summary>
    private const double LeastTurn = Math.PI / 180;

    /// <summary>The whole body across the bend.</summary>
    public Slab Across => new(-Thickness / 2, Thickness / 2);

    /// <summary>Radius of the line that the run is measured on, mm: the centre line unless said otherwise.</summary>
    public double Line { get; private init; } = Radius;

    /// <summary>Length of the run on its line, mm.</summary>
    public double Length => Line * Math.Abs(Turn);

    /// <summary>The tightest bend of a footprint: an outer and an inner arc about one centre. Null where there is none.</summary>
    /// <param name="footprint">In plan.</param>
    /// <param name="hint">Direction of the wall's axis from end to end: decides which way the run goes.</param>
    public static PlanCurve? In(Region footprint, Vector2 hint)
    {
        ImmutableArray<LoopArc> arcs =
        [
            .. footprint.Parts
                .SelectMany(part => LoopArc.In(part.Outline).Concat(part.Holes.SelectMany(hole => LoopArc.In(hole.Outline)).Select(arc => arc with { Turn = -arc.Turn })))
                .Where(arc => Math.Abs(arc.Turn) >= LeastTurn),
        ];
        return arcs
            .Where(arc => arc.Turn > 0)
            .SelectMany(outer => arcs.Where(inner => inner.Turn < 0 && AreConcentric(outer, inner)).Select(inner => Between(outer, inner, footprint, hint)))
            .MinBy(curve => curve.Radius);
    }

    /// <summary>The same bend with its run measured on the line at an offset to the left.</summary>
    public PlanCurve MeasuredAt(double left) => this with { Line = RadiusAt(left) };

    /// <summary>The cut of a solid by the upright cylinder at an offset to the left, along the run and up.</summary>
    public Region Section(Solid solid, double left)
    {
        var radius = RadiusAt(left);
        var steps = CircleArc.Steps(radius, Turn);
        return Region.Of(Enumerable.Range(0, steps).SelectMany(step => Chord(solid, radius, step, steps)));
    }

    /// <summary>How far to the left of the centre line a plan point lies, mm.</summary>
    public double Left(Vector2 point) => Math.Sign(Turn) * (Radius - (point - Centre).Length);

    /// <summary>A plan point of the unrolled wall.</summary>
    public Vector2 Plan(double along, double left)
    {
        var angle = From + (Math.Sign(Turn) * along / Line);
        return Centre + (new Vector2(Math.Cos(angle), Math.Sin(angle)) * RadiusAt(left));
    }

    /// <summary>Direction of the run at a place of it.</summary>
    public Vector2 Direction(double along)
    {
        var angle = From + (Math.Sign(Turn) * along / Line);
        return new Vector2(-Math.Sin(angle), Math.Cos(angle)) * Math.Sign(Turn);
    }

    private static PlanCurve Between(LoopArc outer, LoopArc inner, Region footprint, Vector2 hint)
    {
        const double WholeShare = 0.03;
        // One centre for both: the thickness is small against an error in the radius.
        var thickness = outer.Radius - inner.Corners.Average(corner => (corner - outer.Centre).Length);
        // A mitred end reaches farther on one of the arcs; the run goes as far as the longer one.
        double Angle(Vector2 corner) => Math.Atan2(corner.Y - outer.Centre.Y, corner.X - outer.Centre.X);
        var start = Angle(outer.Corners[0]);
        var places = outer.Corners.Concat(inner.Corners).Select(corner => start + (outer.Turn / 2) + Math.IEEERemainder(Angle(corner) - start - (outer.Turn / 2), 2 * Math.PI)).ToList();
        var (from, to) = (places.Min(), places.Max());
        var curve = new PlanCurve(outer.Centre, outer.Radius - (thickness / 2), thickness, from, to - from, false);
        var isWhole = Math.Abs(footprint.Area - (curve.Length * thickness)) <= WholeShare * footprint.Area;
        var chord = curve.Plan(curve.Length, 0) - curve.Plan(0, 0);
        return Vector2.Dot(chord, hint) < 0 ? curve with { From = to, Turn = from - to, IsWhole = isWhole } : curve with { IsWhole = isWhole };
    }

    private static bool AreConcentric(LoopArc outer, LoopArc inner) =>
        outer.Radius > inner.Radius && (outer.Centre - inner.Centre).Length <= (outer.Radius - inner.Radius) / 4;

    // Left of a run that turns left lies the centre.
    private double RadiusAt(double left) => Radius - (Math.Sign(Turn) * left);

    // The upright cut along one chord, stretched to the length that its arc has on the measured line.
    private IEnumerable<ImmutableArray<Vector2>> Chord(Solid solid, double radius, int step, int steps)
    {
        Vector2 At(int i) => Centre + (new Vector2(Math.Cos(From + (Turn * i / steps)), Math.Sin(From + (Turn * i / steps))) * radius);
        var (start, chord) = (At(step), At(step + 1) - At(step));
        var along = chord.Unit();
        var plane = Plane3.Through(new Vector3(start.X, start.Y, 0), new Vector3(along.Y, -along.X, 0));
        var (from, to) = (Upright(start, -along), Upright(start + chord, along));
        var scale = Length / steps / chord.Length;
        foreach (var face in solid.Cells.Select(cell => cell.Section(plane)).OfType<PlanarFace>().Select(face => face.Split(from).Behind?.Split(to).Behind).OfType<PlanarFace>())
        {
            ImmutableArray<Vector2> points = [.. face.Loop.Select(p => new Vector2((Length * step / steps) + (Vector2.Dot(p.Plan - start, along) * scale), p.Z))];
            yield return [.. ConvexHull.Of(points).Select(index => points[index])];
        }
    }

    private static Plane3 Upright(Vector2 point, Vector2 normal) => Plane3.Through(new Vector3(point.X, point.Y, 0), new Vector3(normal.X, normal.Y, 0));
}
