using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>Curves as chains of points, mm; arcs in chords. Plane curves lie at z = 0.</summary>
public sealed class CurveReader
{
    private const int DeepestNesting = 16;

    private readonly ShapeSource _source;

    /// <summary>Curves being read: one that is a part of itself can't be.</summary>
    private readonly HashSet<long> _open = [];

    public CurveReader(ShapeSource source) => _source = source;

    /// <summary>The loop of a closed plane curve without its first point again; empty where the curve can't be read.</summary>
    public ImmutableArray<Vector2> Loop(StepValue curve)
    {
        var loop = Cleaned(Chain(curve)).Select(point => point.Plan).ToList();
        while (loop.Count > 1 && (loop[^1] - loop[0]).Length <= Plane3.Tolerance)
        {
            loop.RemoveAt(loop.Count - 1);
        }

        return loop.Count < 3 ? [] : [.. loop];
    }

    /// <summary>The points of a curve, first and last included; empty where it can't be read.</summary>
    public ImmutableArray<Vector3> Chain(StepValue curve) => Cleaned(Points(_source.Follow(curve), 0));

    /// <summary>The points of an edge's curve from one vertex to another; null where the curve can't be read.</summary>
    public ImmutableArray<Vector3>? Between(StepValue curve, Vector3 from, Vector3 to, bool isSameSense, int depth = 0)
    {
        switch (_source.Follow(curve))
        {
            case { Type: "IFCLINE" or "IFCPOLYLINE" }:
                return [from, to];
            case { Type: "IFCCIRCLE" or "IFCELLIPSE" } conic:
                var (place, a, b) = (_source.Placement(conic[0]), Radii(conic).A, Radii(conic).B);
                var arc = Turned(place, a, b, Angle(from, place, a, b), Angle(to, place, a, b), isSameSense);
                return [from, .. arc[1..^1], to];
            case { Type: "IFCSURFACECURVE" or "IFCSEAMCURVE" or "IFCINTERSECTIONCURVE" } onSurface:
                return depth > DeepestNesting ? null : Between(onSurface[0], from, to, isSameSense, depth + 1);
            default:
                var chain = Chain(curve);
                return chain.Length < 2 ? null : isSameSense ? [from, .. chain[1..^1], to] : [from, .. chain[1..^1].Reverse(), to];
        }
    }

    private static ImmutableArray<Vector3> Cleaned(ImmutableArray<Vector3> points)
    {
        var kept = ImmutableArray.CreateBuilder<Vector3>(points.Length);
        foreach (var point in points)
        {
            if (kept.Count == 0 || (point - kept[^1]).Length > Plane3.Tolerance)
            {
                kept.Add(point);
            }
        }

        return kept.ToImmutable();
    }

    private ImmutableArray<Vector3> Points(StepInstance? curve, int depth)
    {
        if (curve is null || depth > DeepestNesting || !_open.Add(curve.Id))
        {
            return [];
        }

        var points = Kind(curve, depth);
        _open.Remove(curve.Id);
        return points;
    }

    private ImmutableArray<Vector3> Kind(StepInstance curve, int depth) => curve switch
    {
        { Type: "IFCPOLYLINE" } => [.. curve[0].AsList.Select(_source.Point).OfType<Vector3>()],
        { Type: "IFCINDEXEDPOLYCURVE" } => Indexed(curve),
        { Type: "IFCCOMPOSITECURVE" or "IFC2DCOMPOSITECURVE" or "IFCOUTERBOUNDARYCURVE" or "IFCBOUNDARYCURVE" or "IFCCOMPOSITECURVEONSURFACE" } =>
            [.. curve[0].AsList.SelectMany(segment => Segment(_source.Follow(segment), depth + 1))],
        { Type: "IFCTRIMMEDCURVE" } => Trimmed(curve, depth + 1),
        { Type: "IFCCIRCLE" or "IFCELLIPSE" } => Whole(curve),
        { Type: "IFCSURFACECURVE" or "IFCSEAMCURVE" or "IFCINTERSECTIONCURVE" } => Points(_source.Follow(curve[0]), depth + 1),
        { Type: "IFCBSPLINECURVEWITHKNOTS" or "IFCRATIONALBSPLINECURVEWITHKNOTS" or "IFCBEZIERCURVE" or "IFCRATIONALBEZIERCURVE" } => Spline(curve),
        _ => [],
    };

    private ImmutableArray<Vector3> Whole(StepInstance conic)
    {
        var (a, b) = Radii(conic);
        return CircleArc.Chords(_source.Placement(conic[0]), a, b, 0, 2 * Math.PI);
    }

    private (double A, double B) Radii(StepInstance conic)
    {
        var a = _source.Length(conic[1]) ?? 0;
        return (a, conic.Type is "IFCELLIPSE" ? _source.Length(conic[2]) ?? a : a);
    }

    private ImmutableArray<Vector3> Segment(StepInstance? segment, int depth)
    {
        if (segment is null)
        {
            return [];
        }

        var points = Points(_source.Follow(segment[2]), depth);
        return segment[1].AsBoolean is false ? [.. points.Reverse()] : points;
    }

    private ImmutableArray<Vector3> Indexed(StepInstance curve)
    {
        ImmutableArray<Vector3> all =
        [
            .. (_source.Follow(curve[0])?[0].AsList ?? []).Select(point => _source.Coordinates(point.AsList)).OfType<Vector3>(),
        ];
        if (curve[1].IsNothing)
        {
            return all;
        }

        var points = ImmutableArray.CreateBuilder<Vector3>();
        foreach (var segment in curve[1].AsList)
        {
            ImmutableArray<Vector3> part =
            [
                .. segment.AsList.Select(index => index.AsInteger - 1).OfType<long>().Where(i => i >= 0 && i < all.Length).Select(i => all[(int)i]),
            ];
            points.AddRange(segment.TypeName is "IFCARCINDEX" && part.Length == 3 ? CircleArc.Through(part[0], part[1], part[2]) : part);
        }

        return points.ToImmutable();
    }

    // Knots of a Bezier curve: each of its pieces ends on the curve.
    private ImmutableArray<Vector3> Spline(StepInstance curve)
    {
        var degree = (int)(curve[0].AsInteger ?? 0);
        ImmutableArray<Vector3> points = [.. curve[1].AsList.Select(_source.Point).OfType<Vector3>()];
        var hasKnots = curve.Type.EndsWith("WITHKNOTS", StringComparison.Ordinal);
        var weights = curve.Type.StartsWith("IFCRATIONAL", StringComparison.Ordinal) ? curve[hasKnots ? 8 : 5].AsList.Select(value => value.AsReal ?? 1) : points.Select(_ => 1.0);
        var knots = hasKnots
            ? curve[5].AsList.Zip(curve[6].AsList, (times, knot) => Enumerable.Repeat(knot.AsReal ?? 0, (int)(times.AsInteger ?? 0))).SelectMany(same => same)
            : degree < 1 ? [] : Enumerable.Range(0, (points.Length - 1) / degree + 1).SelectMany(i => Enumerable.Repeat((double)i, degree)).Prepend(0).Append((points.Length - 1) / degree);
        var spline = new SplineCurve(degree, points, [.. weights], [.. knots]);
        return spline.IsValid ? spline.Chain() : [];
    }

    private ImmutableArray<Vector3> Trimmed(StepInstance curve, int depth)
    {
        var basis = _source.Follow(curve[0]);
        var agrees = curve[3].AsBoolean ?? true;
        return basis switch
        {
            { Type: "IFCCIRCLE" or "IFCELLIPSE" } => TrimmedConic(basis, curve[1], curve[2], agrees),
            { Type: "IFCLINE" } => [.. new[] { OnLine(basis, curve[1]), OnLine(basis, curve[2]) }.OfType<Vector3>()],
            { Type: "IFCPOLYLINE" } => Points(basis, depth),
            _ => [],
        };
    }

    private ImmutableArray<Vector3> TrimmedConic(StepInstance conic, StepValue trim1, StepValue trim2, bool agrees)
    {
        var place = _source.Placement(conic[0]);
        var (a, b) = Radii(conic);
        return Parameter(trim1, place, a, b) is { } from && Parameter(trim2, place, a, b) is { } to ? Turned(place, a, b, from, to, agrees) : [];
    }

    // From one angle on to the other, with the curve's sense or against it; equal angles are the whole curve.
    private static ImmutableArray<Vector3> Turned(Transform3 place, double a, double b, double from, double to, bool agrees)
    {
        const double Same = 1e-9;
        if (agrees)
        {
            to += to <= from + Same ? 2 * Math.PI : 0;
        }
        else
        {
            to -= to >= from - Same ? 2 * Math.PI : 0;
        }

        return CircleArc.Chords(place, a, b, from, to);
    }

    // Where a trim is given both ways and they differ, the point is right: some programs write angles in another unit than they name.
    private double? Parameter(StepValue trim, Transform3 place, double a, double b)
    {
        const double Same = 0.01;
        var angle = trim.AsList.Select(choice => choice.AsReal).FirstOrDefault(value => value is not null) is { } parameter
            ? Math.IEEERemainder(parameter * _source.AngleUnit, 2 * Math.PI)
            : (double?)null;
        var at = trim.AsList.Select(_source.Point).OfType<Vector3>().Select(point => (double?)Angle(point, place, a, b)).FirstOrDefault();
        return angle is { } given && at is { } seen && Math.Abs(Math.IEEERemainder(given - seen, 2 * Math.PI)) > Same ? at : angle ?? at;
    }

    private static double Angle(Vector3 point, Transform3 place, double a, double b)
    {
        var local = point - place.Origin;
        return Math.Atan2(Vector3.Dot(local, place.Y) / b, Vector3.Dot(local, place.X) / a);
    }

    private Vector3? OnLine(StepInstance line, StepValue trim)
    {
        foreach (var choice in trim.AsList)
        {
            if (_source.Point(choice) is { } point)
            {
                return point;
            }
        }

        if (trim.AsList.Select(choice => choice.AsReal).FirstOrDefault(value => value is not null) is not { } parameter
            || _source.Point(line[0]) is not { } start
            || _source.Follow(line[1]) is not { } vector
            || _source.Direction(vector[0]) is not { } direction)
        {
            return null;
        }

        return start + (direction * (parameter * (_source.Length(vector[1]) ?? 1)));
    }
}
