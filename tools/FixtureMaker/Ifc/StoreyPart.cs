using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>A storey with its slab, its walls and their openings and fillings.</summary>
internal static class StoreyPart
{
    public static Reference Write(
        ModelFile file, Reference buildingPlacement, Storey storey, MaterialPart materials, Dictionary<string, Reference> walls)
    {
        var placement = file.Placement(buildingPlacement, file.Axes(0, 0, storey.Elevation));
        var instance = file.AddRoot(
            "IFCBUILDINGSTOREY", $"storey {storey.Name}", storey.Name, null, null, placement, null, null,
            new Keyword("ELEMENT"), storey.Elevation);
        List<Reference> contents = storey.SlabOutline.IsEmpty ? [] : [WriteSlab(file, placement, storey)];
        foreach (var wall in storey.Walls)
        {
            var written = WallPart.Write(file, placement, wall, materials);
            walls.Add(wall.Name, written.Wall);
            wall.Beside?.Invoke(file, written);
            contents.Add(written.Wall);
            foreach (var opening in wall.Openings)
            {
                if (OpeningPart.Write(file, written.Wall, written.Placement, wall, opening) is { } filling)
                {
                    contents.Add(filling);
                }
            }
        }

        file.AddRoot("IFCRELCONTAINEDINSPATIALSTRUCTURE", $"contents of {storey.Name}", null, null, contents, instance);
        return instance;
    }

    private static Reference WriteSlab(ModelFile file, Reference storeyPlacement, Storey storey)
    {
        var outline = file.Polyline(storey.SlabOutline, closed: true);
        var profile = file.Step.Add("IFCARBITRARYCLOSEDPROFILEDEF", new Keyword("AREA"), null, outline);
        var body = file.Extrude(profile, file.Axes(0, 0, -storey.SlabThickness), storey.SlabThickness);
        var shape = file.Shape(file.BodyRepresentation("SweptSolid", body));
        var placement = file.Placement(storeyPlacement, file.Axes(0, 0, 0));
        return file.AddRoot(
            "IFCSLAB", $"slab {storey.Name}", $"Slab {storey.Name}", null, null, placement, shape, null,
            new Keyword(storey.Elevation == 0 ? "BASESLAB" : "FLOOR"));
    }
}
