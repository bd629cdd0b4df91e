using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>Solids that a profile sweeps: along a line, around an axis, along a curve, or changing on the way; mm.</summary>
public sealed class SweepReader
{
    private readonly ShapeSource _source;
    private readonly ProfileReader _profiles;
    private readonly CurveReader _curves;

    public SweepReader(ShapeSource source)
    {
        _source = source;
        _profiles = new ProfileReader(source);
        _curves = new CurveReader(source);
    }

    /// <summary>IfcSweptAreaSolid and its kinds; null where the item is another one or its profile is not read.</summary>
    public Solid? Read(StepInstance item) => item.Type switch
    {
        "IFCEXTRUDEDAREASOLID" => All(item, (profile, place) => profile.Extruded(place, Sweep(item, place))),
        "IFCEXTRUDEDAREASOLIDTAPERED" => Tapered(item),
        "IFCREVOLVEDAREASOLID" => All(item, (profile, place) => Revolved(item, profile, place)),
        "IFCSURFACECURVESWEPTAREASOLID" => AlongCurve(item, Upwards(item[5])),
        "IFCFIXEDREFERENCESWEPTAREASOLID" => AlongCurve(item, _source.Direction(item[5])),
        _ => null,
    };

    private Solid? All(StepInstance item, Func<Profile, Transform3, Solid?> swept)
    {
        var place = _source.Placement(item[1]);
        var solids = _profiles.Read(item[0]).Select(profile => swept(profile, place)).ToList();
        return solids.Count == 0 || solids.Contains(null) ? null : solids.OfType<Solid>().Aggregate((a, b) => a.Union(b));
    }

    private Vector3 Sweep(StepInstance item, Transform3 place) =>
        place.Direction(_source.Direction(item[2]) ?? new Vector3(0, 0, 1)) * (_source.Length(item[3]) ?? 0);

    // Between two profiles with as many corners each; a side between unlike edges is two triangles.
    private Solid? Tapered(StepInstance item)
    {
        var place = _source.Placement(item[1]);
        var sweep = Sweep(item, place);
        if (_profiles.Read(item[0]) is not [{ Loops: [var foot] }] || _profiles.Read(item[4]) is not [{ Loops: [var head] }] || foot.Length != head.Length)
        {
            return null;
        }

        ImmutableArray<Vector3> from = [.. foot.Select(point => place.Point(new Vector3(point.X, point.Y, 0)))];
        ImmutableArray<Vector3> to = [.. head.Select(point => place.Point(new Vector3(point.X, point.Y, 0)) + sweep)];
        var sides = Enumerable.Range(0, from.Length).SelectMany(i => FaceReader.Faces([from[i], from[(i + 1) % from.Length], to[(i + 1) % to.Length], to[i]], []));
        return ClosedFaces.Enclosed([.. sides, .. FaceReader.Faces([.. from.Reverse()], []), .. FaceReader.Faces(to, [])]);
    }

    // In steps: the quadrilateral between an edge and its turned copy is plane.
    private Solid? Revolved(StepInstance item, Profile profile, Transform3 place)
    {
        if (_source.Follow(item[2]) is not { } axis || (item[3].AsReal ?? 0) * _source.AngleUnit is var angle && Math.Abs(angle) < 1e-6)
        {
            return null;
        }

        var line = place.Direction(_source.Direction(axis[1]) ?? new Vector3(0, 0, 1));
        var foot = place.Point(_source.Point(axis[0]) ?? default);
        var reach = profile.Loops.SelectMany(loop => loop).Max(point => Vector3.Cross(place.Point(new Vector3(point.X, point.Y, 0)) - foot, line).Length);
        var steps = CircleArc.Steps(reach, angle);
        ImmutableArray<Vector3> Turned(ImmutableArray<Vector2> loop, int step) =>
            [.. loop.Select(point => Transform3.Turn(foot, line, angle * step / steps).Point(place.Point(new Vector3(point.X, point.Y, 0))))];
        var faces = new List<PlanarFace>();
        foreach (var loop in profile.Loops)
        {
            for (var step = 0; step < steps; step++)
            {
                var (from, to) = (Turned(loop, step), Turned(loop, step + 1));
                faces.AddRange(Enumerable.Range(0, loop.Length).SelectMany(i => FaceReader.Faces([from[i], from[(i + 1) % from.Length], to[(i + 1) % to.Length], to[i]], [])));
            }
        }

        if (Math.Abs(angle) < (2 * Math.PI) - 1e-6)
        {
            var (first, last) = (profile.Loops.Select(loop => Turned(loop, 0)).ToList(), profile.Loops.Select(loop => Turned(loop, steps)).ToList());
            faces.AddRange(FaceReader.Faces([.. first[0].Reverse()], first.Skip(1)));
            faces.AddRange(FaceReader.Faces(last[0], last.Skip(1)));
        }

        return ClosedFaces.Enclosed(faces);
    }

    // The profile's x axis keeps to a direction, its plane stands square to the curve; where the curve turns the pieces are mitred.
    private Solid? AlongCurve(StepInstance item, Vector3? upwards)
    {
        var place = _source.Placement(item[1]);
        ImmutableArray<Vector3> curve = [.. _curves.Chain(item[2]).Select(place.Point)];
        var profiles = _profiles.Read(item[0]);
        if (upwards is not { } given || curve.Length < 2 || profiles.IsEmpty)
        {
            return null;
        }

        var up = place.Direction(given);
        var isClosed = (curve[^1] - curve[0]).Length <= Plane3.Tolerance;
        var solid = Solid.Empty;
        for (var i = 0; i + 1 < curve.Length; i++)
        {
            var along = (curve[i + 1] - curve[i]).Unit();
            var before = i > 0 ? (curve[i] - curve[i - 1]).Unit() : isClosed ? (curve[^1] - curve[^2]).Unit() : along;
            var after = i + 2 < curve.Length ? (curve[i + 2] - curve[i + 1]).Unit() : isClosed ? (curve[1] - curve[0]).Unit() : along;
            var x = (up - (along * Vector3.Dot(up, along))).Unit();
            var reach = profiles.SelectMany(profile => profile.Loops).SelectMany(loop => loop).Max(point => point.Length) * 10;
            var start = new Transform3(curve[i] - (along * reach), x, Vector3.Cross(along, x), along);
            var sweep = curve[i + 1] - curve[i] + (along * (2 * reach));
            var piece = profiles.Select(profile => profile.Extruded(start, sweep)).Aggregate((a, b) => a.Union(b));
            solid = solid.Union(piece.Behind(Plane3.Through(curve[i], before + along).Reversed).Behind(Plane3.Through(curve[i + 1], along + after)));
        }

        return solid;
    }

    private Vector3? Upwards(StepValue surface) =>
        _source.Follow(surface) is { Type: "IFCPLANE" } plane ? _source.Placement(plane[0]).Z : null;
}
