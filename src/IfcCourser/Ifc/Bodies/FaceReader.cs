using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>The faces of breps, surface models and tessellations; loops in mm, as they are wound in the model.</summary>
public sealed class FaceReader
{
    /// <summary>Corners farther than this, in mm, from their face's plane: the face is taken as triangles.</summary>
    private const double Flat = 0.1;

    private readonly ShapeSource _source;

    public FaceReader(ShapeSource source) => _source = source;

    /// <summary>IfcConnectedFaceSet and its kinds.</summary>
    public IEnumerable<PlanarFace> Shell(StepValue shell) =>
        (_source.Follow(shell)?[0].AsList ?? []).SelectMany(face => Face(_source.Follow(face)));

    /// <summary>Whether every face of a shell is plane and has straight edges; others are not followed.</summary>
    public bool IsFlat(StepValue shell) => (_source.Follow(shell)?[0].AsList ?? []).Select(_source.Follow).OfType<StepInstance>().All(IsFlat);

    /// <summary>IfcTriangulatedFaceSet, with its second index list where it has one.</summary>
    public IEnumerable<PlanarFace> Triangles(StepInstance set)
    {
        var points = PointList(set[0]);
        var places = set[4].AsList;
        return set[3].AsList.SelectMany(triangle => Faces([.. Corners(triangle, points, places)], []));
    }

    /// <summary>IfcPolygonalFaceSet.</summary>
    public IEnumerable<PlanarFace> Polygons(StepInstance set)
    {
        var points = PointList(set[0]);
        var places = set[3].AsList;
        foreach (var face in set[2].AsList.Select(_source.Follow).OfType<StepInstance>())
        {
            var holes = face.Type is "IFCINDEXEDPOLYGONALFACEWITHVOIDS" ? face[1].AsList : [];
            foreach (var part in Faces([.. Corners(face[0], points, places)], holes.Select(hole => Corners(hole, points, places).ToImmutableArray())))
            {
                yield return part;
            }
        }
    }

    private bool IsFlat(StepInstance face)
    {
        var edges = face[0].AsList
            .Select(_source.Follow)
            .SelectMany(bound => _source.Follow(bound?[0] ?? StepValue.Omitted) is { Type: "IFCEDGELOOP" } loop ? loop[0].AsList : [])
            .Select(oriented => _source.Follow(_source.Follow(oriented)?[2] ?? StepValue.Omitted));
        return (face[1].IsNothing || _source.Follow(face[1])?.Type is "IFCPLANE")
            && edges.All(edge => edge is not { Type: "IFCEDGECURVE" } || _source.Follow(edge[2])?.Type is "IFCLINE" or "IFCPOLYLINE");
    }

    private IEnumerable<PlanarFace> Face(StepInstance? face)
    {
        var bounds = (face?[0].AsList ?? []).Select(_source.Follow).OfType<StepInstance>().Select(bound => (Loop: Loop(bound), bound.Type)).ToList();
        var outer = bounds.FindIndex(bound => bound.Type is "IFCFACEOUTERBOUND");
        outer = outer >= 0 || bounds.Count == 0 ? outer : bounds.IndexOf(bounds.MaxBy(bound => PlanarFace.Around(bound.Loop)?.AreaVector.Length ?? 0));
        return outer < 0 ? [] : Faces(bounds[outer].Loop, bounds.Where((_, i) => i != outer).Select(bound => bound.Loop));
    }

    private ImmutableArray<Vector3> Loop(StepInstance bound)
    {
        var loop = _source.Follow(bound[0]);
        var points = loop?.Type is "IFCPOLYLOOP" ? loop[0].AsList.Select(_source.Point).OfType<Vector3>() : EdgeLoop(loop);
        return bound[1].AsBoolean is false ? [.. points.Reverse()] : [.. points];
    }

    // IfcEdgeLoop of straight edges.
    private IEnumerable<Vector3> EdgeLoop(StepInstance? loop)
    {
        foreach (var oriented in (loop?[0].AsList ?? []).Select(_source.Follow).OfType<StepInstance>())
        {
            var edge = _source.Follow(oriented[2]);
            var vertex = _source.Follow(edge?[oriented[3].AsBoolean is false ? 1 : 0] ?? StepValue.Omitted);
            if (vertex is not null && _source.Point(vertex[0]) is { } point)
            {
                yield return point;
            }
        }
    }

    private static IEnumerable<PlanarFace> Faces(ImmutableArray<Vector3> outer, IEnumerable<ImmutableArray<Vector3>> holes)
    {
        if (PlanarFace.Around(outer) is not { } face)
        {
            return [];
        }

        if (outer.Length > 3 && outer.Any(point => Math.Abs(face.Plane.Distance(point)) > Flat))
        {
            return Enumerable.Range(1, outer.Length - 2).Select(i => PlanarFace.Around([outer[0], outer[i], outer[i + 1]])).OfType<PlanarFace>();
        }

        return [holes.Aggregate(face, WithHole)];
    }

    // The hole joins the loop by a seam between the two nearest corners.
    private static PlanarFace WithHole(PlanarFace face, ImmutableArray<Vector3> hole)
    {
        if (PlanarFace.Around(hole) is not { } inner)
        {
            return face;
        }

        var turned = Vector3.Dot(inner.AreaVector, face.Plane.Normal) > 0 ? inner.Loop.Reverse().ToImmutableArray() : inner.Loop;
        var (at, from) = (0, 0);
        for (var i = 0; i < face.Loop.Length; i++)
        {
            for (var j = 0; j < turned.Length; j++)
            {
                (at, from) = (face.Loop[i] - turned[j]).Length < (face.Loop[at] - turned[from]).Length ? (i, j) : (at, from);
            }
        }

        return face with { Loop = [.. face.Loop[..(at + 1)], .. turned[from..], .. turned[..(from + 1)], .. face.Loop[at..]] };
    }

    private static IEnumerable<Vector3> Corners(StepValue indices, ImmutableArray<Vector3> points, ImmutableArray<StepValue> places)
    {
        foreach (var index in indices.AsList.Select(index => index.AsInteger).OfType<long>())
        {
            var place = places.IsDefaultOrEmpty ? index : (index >= 1 && index <= places.Length ? places[(int)index - 1].AsInteger ?? 0 : 0);
            if (place >= 1 && place <= points.Length)
            {
                yield return points[(int)place - 1];
            }
        }
    }

    private ImmutableArray<Vector3> PointList(StepValue list) =>
        [.. (_source.Follow(list)?[0].AsList ?? []).Select(point => _source.Coordinates(point.AsList) ?? default)];
}
