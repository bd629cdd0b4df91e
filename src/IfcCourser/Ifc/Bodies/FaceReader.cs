using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>The faces of breps, surface models and tessellations, in mm; bent ones in plane facets.</summary>
public sealed class FaceReader
{
    /// <summary>Corners farther than this, in mm, from their face's plane: the face is taken as triangles.</summary>
    private const double Flat = 0.1;

    private readonly ShapeSource _source;
    private readonly CurveReader _curves;

    public FaceReader(ShapeSource source)
    {
        _source = source;
        _curves = new CurveReader(source);
    }

    /// <summary>IfcConnectedFaceSet and its kinds.</summary>
    public IEnumerable<PlanarFace> Shell(StepValue shell) => FacesOf(shell).SelectMany(face => Face(face));

    /// <summary>
    /// Whether every face of a shell is plane or swept by a straight line along a curve, as cylinders are; faces that bend
    /// both ways are not followed.
    /// </summary>
    public bool CanFollow(StepValue shell) => FacesOf(shell).All(CanFollow);

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

    /// <summary>A flat or nearly flat face with holes; empty where its loop spans no area.</summary>
    public static IEnumerable<PlanarFace> Faces(ImmutableArray<Vector3> outer, IEnumerable<ImmutableArray<Vector3>> holes)
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

    private IEnumerable<StepInstance> FacesOf(StepValue shell) => _source.Follow(shell) is { } faces ? Members(faces[0]) : [];

    /// <summary>Of a SET each once (ISO 10303-11, SET data type, from memory): files that name one over and over are broken or hostile.</summary>
    private IEnumerable<StepInstance> Members(StepValue set) => set.AsList.Select(_source.Follow).OfType<StepInstance>().DistinctBy(member => member.Id);

    private bool CanFollow(StepInstance face) =>
        (face[1].IsNothing || _source.Follow(face[1])?.Type is "IFCPLANE" or "IFCCYLINDRICALSURFACE" or "IFCSURFACEOFLINEAREXTRUSION")
        && Members(face[0]).All(bound => Loop(bound) is not null);

    private ImmutableArray<PlanarFace> Face(StepInstance face)
    {
        var bounds = Members(face[0]).Select(bound => (Loop: Loop(bound) ?? [], bound.Type)).ToList();
        ImmutableArray<ImmutableArray<Vector3>> loops = [.. bounds.Select(bound => bound.Loop)];
        switch (face[1].IsNothing ? null : _source.Follow(face[1]))
        {
            case { Type: "IFCCYLINDRICALSURFACE" } cylinder:
                var (place, radius) = (_source.Placement(cylinder[0]), _source.Length(cylinder[1]) ?? 0);
                return UnrolledSurface.Facets(CircleArc.Chords(place, radius, radius, 0, 2 * Math.PI), place.Z, loops);
            case { Type: "IFCSURFACEOFLINEAREXTRUSION" } swept:
                var at = _source.Placement(swept[1]);
                var curve = _source.Follow(swept[0]) is { } profile ? _curves.Chain(profile[2]) : [];
                return curve.Length < 2 ? [] : UnrolledSurface.Facets([.. curve.Select(at.Point)], at.Direction(_source.Direction(swept[2]) ?? new Vector3(0, 0, 1)), loops);
        }

        var outer = bounds.FindIndex(bound => bound.Type is "IFCFACEOUTERBOUND");
        outer = outer >= 0 || bounds.Count == 0 ? outer : bounds.IndexOf(bounds.MaxBy(bound => PlanarFace.Around(bound.Loop)?.AreaVector.Length ?? 0));
        return outer < 0 ? [] : [.. Faces(loops[outer], loops.RemoveAt(outer))];
    }

    // Null where an edge can't be followed.
    private ImmutableArray<Vector3>? Loop(StepInstance bound)
    {
        var loop = _source.Follow(bound[0]);
        var points = loop?.Type is "IFCPOLYLOOP" ? [.. loop[0].AsList.Select(_source.Point).OfType<Vector3>()] : EdgeLoop(loop);
        return bound[1].AsBoolean is false && points is { } known ? [.. known.Reverse()] : points;
    }

    // Each edge up to, not including, its last point.
    private ImmutableArray<Vector3>? EdgeLoop(StepInstance? loop)
    {
        var points = ImmutableArray.CreateBuilder<Vector3>();
        foreach (var oriented in (loop?[0].AsList ?? []).Select(_source.Follow).OfType<StepInstance>())
        {
            if (_source.Follow(oriented[2]) is not { } edge || Vertex(edge[0]) is not { } start || Vertex(edge[1]) is not { } end)
            {
                return null;
            }

            ImmutableArray<Vector3>? chain = edge.Type is "IFCEDGECURVE" ? _curves.Between(edge[2], start, end, edge[3].AsBoolean is not false) : [start, end];
            if (chain is not { } known)
            {
                return null;
            }

            points.AddRange(oriented[3].AsBoolean is false ? known.Reverse().SkipLast(1) : known.SkipLast(1));
        }

        return points.ToImmutable();
    }

    private Vector3? Vertex(StepValue vertex) => _source.Follow(vertex) is { } point ? _source.Point(point[0]) : null;

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
