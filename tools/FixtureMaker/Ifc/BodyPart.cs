using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>The Body representation of a wall; none where its parts have theirs.</summary>
internal static class BodyPart
{
    public static Reference? Write(ModelFile file, Wall wall) => wall.Body switch
    {
        Body.Box box => file.BodyRepresentation("SweptSolid", Box(file, wall.BuildUp, box.From, box.To, box.Height)),
        Body.Plan plan => file.BodyRepresentation("SweptSolid", file.Extrude(Profile(file, plan.Outline), null, plan.Height)),
        Body.Upright upright => file.BodyRepresentation("SweptSolid", Upright(file, wall.BuildUp, upright)),
        Body.Clipped clipped => file.BodyRepresentation("Clipping", Clipped(file, wall.BuildUp, clipped)),
        Body.Items items => file.BodyRepresentation(items.Kind, items.Write(file)),
        _ => null,
    };

    /// <summary>Axes with x along the wall and y up, whose z runs across it towards the right (local -y).</summary>
    public static Reference UprightAxes(ModelFile file, double x, double y, double z) =>
        file.Axes(file.Point(x, y, z), file.Direction(0, -1, 0), file.Direction(1, 0, 0));

    private static Reference Box(ModelFile file, BuildUp buildUp, double from, double to, double height) =>
        file.Box(null, new Point(from, buildUp.Low), to - from, buildUp.Thickness, height);

    private static Reference Profile(ModelFile file, IEnumerable<Point> outline) => file.Step.Add(
        "IFCARBITRARYCLOSEDPROFILEDEF", new Keyword("AREA"), null, file.Polyline(outline, closed: true));

    private static Reference Upright(ModelFile file, BuildUp buildUp, Body.Upright body) =>
        file.Extrude(Profile(file, body.Outline), UprightAxes(file, 0, buildUp.High, 0), buildUp.Thickness);

    private static Reference Clipped(ModelFile file, BuildUp buildUp, Body.Clipped body)
    {
        var solid = Box(file, buildUp, body.From, body.To, body.Height);
        foreach (var roof in body.Roof)
        {
            solid = file.Step.Add("IFCBOOLEANCLIPPINGRESULT", new Keyword("DIFFERENCE"), solid, Above(file, roof, body.Bounds));
        }

        return solid;
    }

    // Agreement is false: the half space holds the points on the side the plane's normal points to (IFC4 ADD2 TC1, IfcHalfSpaceSolid).
    private static Reference Above(ModelFile file, RoofLine roof, ClipBounds bounds)
    {
        var (run, rise) = (roof.Right.X - roof.Left.X, roof.Right.Y - roof.Left.Y);
        var length = Math.Sqrt((run * run) + (rise * rise));
        var normal = file.Direction(-rise / length, 0, run / length);
        var along = file.Direction(run / length, 0, rise / length);
        var plane = file.Step.Add("IFCPLANE", file.Axes(file.Point(roof.Left.X, 0, roof.Left.Y), normal, along));
        if (bounds == ClipBounds.Endless)
        {
            return file.Step.Add("IFCHALFSPACESOLID", plane, Keyword.False);
        }

        List<Point> around = [new(roof.Left.X, -run), new(roof.Right.X, -run), new(roof.Right.X, run), new(roof.Left.X, run)];
        return file.Step.Add(
            "IFCPOLYGONALBOUNDEDHALFSPACE", plane, Keyword.False, file.Axes(0, 0, 0), file.Polyline(around, closed: true));
    }
}
