using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>A wall with its axis, body, material, type and property sets.</summary>
internal static class WallPart
{
    public static WrittenWall Write(ModelFile file, Reference storeyPlacement, Wall wall, MaterialPart materials)
    {
        var axes = file.Axes(
            file.Point(wall.Start.X, wall.Start.Y, 0), file.Direction(0, 0, 1), file.Direction(wall.Heading.X, wall.Heading.Y, 0));
        var placement = file.Placement(storeyPlacement, axes);
        Reference[] representations = [.. new[] { Axis(file, wall), BodyPart.Write(file, wall) }.OfType<Reference>()];
        Reference? shape = representations is [] ? null : file.Shape(representations);
        var instance = file.AddRoot(
            EntityName(wall.Entity), $"wall {wall.Name}",
            [
                wall.Name, null, wall.BuildUp.Name, placement, shape, null, .. file.InIfc4(new Keyword("STANDARD")),
            ]);
        materials.Assign(instance, wall.BuildUp);
        PropertyPart.Write(file, instance, wall);
        return new WrittenWall(instance, placement, shape);
    }

    private static Reference? Axis(ModelFile file, Wall wall) => wall.HasAxis
        ? file.Step.Add(
            "IFCSHAPEREPRESENTATION", file.AxisContext, "Axis", "Curve2D",
            new[] { file.Polyline([new(wall.AxisFrom, 0), new(wall.AxisTo, 0)], closed: false) })
        : null;

    private static string EntityName(WallEntity entity) => entity switch
    {
        WallEntity.Wall => "IFCWALL",
        WallEntity.WallStandardCase => "IFCWALLSTANDARDCASE",
        _ => "IFCWALLELEMENTEDCASE",
    };
}
