using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>A wall with its axis, body, material, type and property sets.</summary>
internal static class WallPart
{
    public static (Reference Wall, Reference Placement) Write(
        ModelFile file, Reference storeyPlacement, Wall wall, MaterialPart materials)
    {
        var (x, y) = Along(wall.Heading);
        var axes = file.Axes(file.Point(wall.Start.X, wall.Start.Y, 0), file.Direction(0, 0, 1), file.Direction(x, y, 0));
        var placement = file.Placement(storeyPlacement, axes);
        var axis = file.Polyline([new(wall.AxisFrom, 0), new(wall.AxisTo, 0)], closed: false);
        var shape = file.Shape(
            file.Step.Add("IFCSHAPEREPRESENTATION", file.AxisContext, "Axis", "Curve2D", new[] { axis }),
            BodyPart.Write(file, wall));
        var entity = wall.Entity == WallEntity.Wall ? "IFCWALL" : "IFCWALLSTANDARDCASE";
        var instance = file.AddRoot(
            entity, $"wall {wall.Name}",
            [wall.Name, null, wall.BuildUp.Name, placement, shape, null, .. file.InIfc4(new Keyword("STANDARD"))]);
        materials.Assign(instance, wall.BuildUp);
        PropertyPart.Write(file, instance, wall);
        return (instance, placement);
    }

    private static (double X, double Y) Along(Heading heading) => heading switch
    {
        Heading.East => (1, 0),
        Heading.North => (0, 1),
        Heading.West => (-1, 0),
        _ => (0, -1),
    };
}
