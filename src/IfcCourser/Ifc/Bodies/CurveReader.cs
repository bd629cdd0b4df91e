using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>Plane curves as chains of points, mm; arcs in steps of five degrees.</summary>
public sealed class CurveReader
{
    private const double Step = Math.PI / 36;
    private const int DeepestNesting = 16;

    private readonly ShapeSource _source;

    public CurveReader(ShapeSource source) => _source = source;

    /// <summary>The loop of a closed curve without its first point again; empty where the curve can't be read.</summary>
    public ImmutableArray<Vector2> Loop(StepValue curve)
    {
        var points = Points(_source.Follow(curve), 0);
        var loop = new List<Vector2>(points.Length);
        foreach (var point in points.Where(point => loop.Count == 0 || (point - loop[^1]).Length > Plane3.Tolerance))
        {
            loop.Add(point);
        }

        while (loop.Count > 1 && (loop[^1] - loop[0]).Length <= Plane3.Tolerance)
        {
            loop.RemoveAt(loop.Count - 1);
        }

        return loop.Count < 3 ? [] : [.. loop];
    }

    /// <summary>The points of an open curve; empty where it can't be read.</summary>
    public ImmutableArray<Vector2> Chain(StepValue curve) => Points(_source.Follow(curve), 0);

    private static ImmutableArray<Vector2> Arc(Transform3 place, double a, double b, double from, double to)
    {
        var steps = Math.Max(1, (int)Math.Ceiling((Math.Abs(to - from) / Step) - 1e-9));
        return
        [
            .. Enumerable.Range(0, steps + 1).Select(i =>
            {
                var angle = from + ((to - from) * i / steps);
                return place.Point(new Vector3(a * Math.Cos(angle), b * Math.Sin(angle), 0)).Plan;
            }),
        ];
    }

    // Through three points: centre where the perpendicular bisectors meet.
    private static ImmutableArray<Vector2> Arc(Vector2 start, Vector2 middle, Vector2 end)
    {
        var (u, v) = (middle - start, end - start);
        var twice = 2 * Vector2.Cross(u, v);
        if (Math.Abs(twice) < 1e-9)
        {
            return [start, middle, end];
        }

        var (uu, vv) = (Vector2.Dot(u, u), Vector2.Dot(v, v));
        var toCentre = new Vector2(((v.Y * uu) - (u.Y * vv)) / twice, ((u.X * vv) - (v.X * uu)) / twice);
        var centre = start + toCentre;
        double Angle(Vector2 point) => Math.Atan2(point.Y - centre.Y, point.X - centre.X);
        var from = Angle(start);
        var sweep = Math.IEEERemainder(Angle(end) - from, 2 * Math.PI);
        sweep += twice > 0 && sweep < 0 ? 2 * Math.PI : twice < 0 && sweep > 0 ? -2 * Math.PI : 0;
        var circle = Transform3.Identity with { Origin = new Vector3(centre.X, centre.Y, 0) };
        var points = Arc(circle, toCentre.Length, toCentre.Length, from, from + sweep);
        return [start, .. points[1..^1], end];
    }

    private ImmutableArray<Vector2> Points(StepInstance? curve, int depth) => depth > DeepestNesting ? [] : curve switch
    {
        { Type: "IFCPOLYLINE" } => [.. curve[0].AsList.Select(_source.PlanePoint).OfType<Vector2>()],
        { Type: "IFCINDEXEDPOLYCURVE" } => Indexed(curve),
        { Type: "IFCCOMPOSITECURVE" or "IFC2DCOMPOSITECURVE" or "IFCOUTERBOUNDARYCURVE" or "IFCBOUNDARYCURVE" } =>
            [.. curve[0].AsList.SelectMany(segment => Segment(_source.Follow(segment), depth + 1))],
        { Type: "IFCTRIMMEDCURVE" } => Trimmed(curve, depth + 1),
        { Type: "IFCCIRCLE" or "IFCELLIPSE" } => Whole(curve),
        _ => [],
    };

    private ImmutableArray<Vector2> Whole(StepInstance conic)
    {
        var (a, b) = Radii(conic);
        return Arc(_source.Placement(conic[0]), a, b, 0, 2 * Math.PI)[..^1];
    }

    private (double A, double B) Radii(StepInstance conic)
    {
        var a = _source.Length(conic[1]) ?? 0;
        return (a, conic.Type is "IFCELLIPSE" ? _source.Length(conic[2]) ?? a : a);
    }

    private ImmutableArray<Vector2> Segment(StepInstance? segment, int depth)
    {
        if (segment is null)
        {
            return [];
        }

        var points = Points(_source.Follow(segment[2]), depth);
        return segment[1].AsBoolean is false ? [.. points.Reverse()] : points;
    }

    private ImmutableArray<Vector2> Indexed(StepInstance curve)
    {
        ImmutableArray<Vector2> all =
        [
            .. (_source.Follow(curve[0])?[0].AsList ?? []).Select(point => _source.Coordinates(point.AsList)?.Plan).OfType<Vector2>(),
        ];
        if (curve[1].IsNothing)
        {
            return all;
        }

        var points = ImmutableArray.CreateBuilder<Vector2>();
        foreach (var segment in curve[1].AsList)
        {
            ImmutableArray<Vector2> part =
            [
                .. segment.AsList.Select(index => index.AsInteger - 1).OfType<long>().Where(i => i >= 0 && i < all.Length).Select(i => all[(int)i]),
            ];
            points.AddRange(segment.TypeName is "IFCARCINDEX" && part.Length == 3 ? Arc(part[0], part[1], part[2]) : part);
        }

        return points.ToImmutable();
    }

    private ImmutableArray<Vector2> Trimmed(StepInstance curve, int depth)
    {
        var basis = _source.Follow(curve[0]);
        var agrees = curve[3].AsBoolean ?? true;
        return basis switch
        {
            { Type: "IFCCIRCLE" or "IFCELLIPSE" } => TrimmedConic(basis, curve[1], curve[2], agrees),
            { Type: "IFCLINE" } => [.. new[] { OnLine(basis, curve[1]), OnLine(basis, curve[2]) }.OfType<Vector2>()],
            { Type: "IFCPOLYLINE" } => Points(basis, depth),
            _ => [],
        };
    }

    private ImmutableArray<Vector2> TrimmedConic(StepInstance conic, StepValue trim1, StepValue trim2, bool agrees)
    {
        var place = _source.Placement(conic[0]);
        var (a, b) = Radii(conic);
        if (Parameter(trim1, place, a, b) is not { } from || Parameter(trim2, place, a, b) is not { } to)
        {
            return [];
        }

        if (agrees)
        {
            to += to <= from + 1e-9 ? 2 * Math.PI : 0;
        }
        else
        {
            to -= to >= from - 1e-9 ? 2 * Math.PI : 0;
        }

        return Arc(place, a, b, from, to);
    }

    private double? Parameter(StepValue trim, Transform3 place, double a, double b)
    {
        foreach (var choice in trim.AsList)
        {
            if (choice.AsReal is { } parameter)
            {
                return Math.IEEERemainder(parameter * _source.AngleUnit, 2 * Math.PI);
            }
        }

        foreach (var point in trim.AsList.Select(_source.Point).OfType<Vector3>())
        {
            var local = point - place.Origin;
            return Math.Atan2(Vector3.Dot(local, place.Y) / b, Vector3.Dot(local, place.X) / a);
        }

        return null;
    }

    private Vector2? OnLine(StepInstance line, StepValue trim)
    {
        foreach (var choice in trim.AsList)
        {
            if (_source.PlanePoint(choice) is { } point)
            {
                return point;
            }
        }

        if (trim.AsList.Select(choice => choice.AsReal).FirstOrDefault(value => value is not null) is not { } parameter
            || _source.PlanePoint(line[0]) is not { } start
            || _source.Follow(line[1]) is not { } vector
            || _source.Direction(vector[0]) is not { } direction)
        {
            return null;
        }

        return start + (direction.Plan * (parameter * (_source.Length(vector[1]) ?? 1)));
    }
}
