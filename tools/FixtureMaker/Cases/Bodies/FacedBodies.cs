using System.Collections.Immutable;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Cases.Bodies;

/// <summary>Bodies given by flat faces: breps, surface models and tessellations of the same gable.</summary>
internal static class FacedBodies
{
    public static ImmutableArray<House> All =>
    [
        BodyCase.Of("faceted-brep", "a gable as a faceted brep", "Brep", file => [file.Step.Add("IFCFACETEDBREP", Shell(file, "IFCCLOSEDSHELL"))]),
        BodyCase.Of(
            "surface-model", "a gable as a surface model", "SurfaceModel",
            file => [file.Step.Add("IFCFACEBASEDSURFACEMODEL", new object[] { new[] { Shell(file, "IFCCONNECTEDFACESET") } })]),
        BodyCase.Of("triangulated-faces", "a gable in triangles", "Tessellation", file => [Triangles(file)]),
        BodyCase.Of("polygonal-faces", "a gable with a hole in polygonal faces", "Tessellation", file => [Polygons(file)]),
    ];

    private static Reference Shell(ModelFile file, string entity)
    {
        var corners = Prism.Gable.Corners.Select(p => file.Point(p[0], p[1], p[2])).ToList();
        var faces = Prism.Gable.Faces.Select(face =>
        {
            var loop = file.Step.Add("IFCPOLYLOOP", new object[] { face.Select(corner => corners[corner]).ToList() });
            return file.Step.Add("IFCFACE", new object[] { new[] { file.Step.Add("IFCFACEOUTERBOUND", loop, Keyword.True) } });
        });
        return file.Step.Add(entity, new object[] { faces.ToList() });
    }

    // Each face as a fan from its first corner.
    private static Reference Triangles(ModelFile file)
    {
        var triangles = Prism.Gable.Faces.SelectMany(face =>
            Enumerable.Range(1, face.Length - 2).Select(i => new[] { face[0] + 1, face[i] + 1, face[i + 1] + 1 }));
        return file.Step.Add("IFCTRIANGULATEDFACESET", Points(file, Prism.Gable.Corners), null, Keyword.True, triangles.ToList(), null);
    }

    // The hole: 1000 to 2000 along, 900 to 1900 up, with four faces that look into it.
    private static Reference Polygons(ModelFile file)
    {
        var (solid, hole) = (Prism.Gable, new Prism([new(1000, 900), new(2000, 900), new(2000, 1900), new(1000, 1900)]));
        var n = solid.Corners.Length;
        var inner = hole.Faces.Select(face => face.Reverse().Select(corner => n + corner + 1).ToList()).ToList();
        var faces = solid.Faces.Select((face, i) =>
        {
            var outer = face.Select(corner => corner + 1).ToList();
            return i < 2
                ? file.Step.Add("IFCINDEXEDPOLYGONALFACEWITHVOIDS", outer, new[] { inner[i] })
                : file.Step.Add("IFCINDEXEDPOLYGONALFACE", new object[] { outer });
        }).ToList();
        faces.AddRange(inner.Skip(2).Select(face => file.Step.Add("IFCINDEXEDPOLYGONALFACE", new object[] { face })));
        return file.Step.Add("IFCPOLYGONALFACESET", Points(file, [.. solid.Corners, .. hole.Corners]), Keyword.True, faces, null);
    }

    private static Reference Points(ModelFile file, ImmutableArray<ImmutableArray<double>> corners) =>
        file.Step.Add("IFCCARTESIANPOINTLIST3D", new object[] { corners });
}
