using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>The file being written, with what every part of it refers to: schema, owner history, contexts, shared geometry.</summary>
internal sealed class ModelFile(House house)
{
    public StepFileWriter Step { get; } = new();

    public House House => house;

    /// <summary>IFC4 or later: what is written here is the same in both.</summary>
    public bool IsIfc4 => house.Schema != SchemaVersion.Ifc2X3;

    public Reference? OwnerHistory { get; set; }

    public Reference BodyContext { get; set; }

    public Reference AxisContext { get; set; }

    /// <summary>Adds an instance of a subtype of IfcRoot; its GlobalId comes from the house and the key.</summary>
    public Reference AddRoot(string entity, string key, params object?[] afterOwnerHistory) =>
        Step.Add(entity, [GlobalIds.FromName($"{house.Key}/{key}"), OwnerHistory, .. afterOwnerHistory]);

    /// <summary>The value in IFC4, or nothing at all in IFC2X3, where the attribute does not exist.</summary>
    public object?[] InIfc4(params object?[] attributes) => IsIfc4 ? attributes : [];

    public Reference Point(double x, double y) => Step.Add("IFCCARTESIANPOINT", new[] { x, y });

    public Reference Point(double x, double y, double z) => Step.Add("IFCCARTESIANPOINT", new[] { x, y, z });

    public Reference Direction(double x, double y, double z) => Step.Add("IFCDIRECTION", new[] { x, y, z });

    /// <summary>An axis placement that only moves.</summary>
    public Reference Axes(double x, double y, double z) => Step.Add("IFCAXIS2PLACEMENT3D", Point(x, y, z), null, null);

    public Reference Axes(Reference location, Reference axis, Reference refDirection) =>
        Step.Add("IFCAXIS2PLACEMENT3D", location, axis, refDirection);

    public Reference Axes2D(double x, double y) => Step.Add("IFCAXIS2PLACEMENT2D", Point(x, y), null);

    public Reference Placement(Reference? relativeTo, Reference axes) => Step.Add("IFCLOCALPLACEMENT", relativeTo, axes);

    public Reference Polyline(IEnumerable<Point> points, bool closed)
    {
        var corners = points.Select(p => Point(p.X, p.Y)).ToList();
        return Step.Add("IFCPOLYLINE", closed ? corners.Append(corners[0]).ToList() : corners);
    }

    public Reference Shape(params Reference[] representations) =>
        Step.Add("IFCPRODUCTDEFINITIONSHAPE", null, null, representations);

    public Reference BodyRepresentation(string type, Reference item) =>
        BodyRepresentation(type, [item]);

    public Reference BodyRepresentation(string type, IReadOnlyList<Reference> items) =>
        Step.Add("IFCSHAPEREPRESENTATION", BodyContext, "Body", type, items);

    /// <summary>A rectangle of the profile plane, given by its corner, extruded along the position's own z.</summary>
    public Reference Box(Reference? position, Point corner, double width, double depth, double extrusion)
    {
        var middle = Axes2D(corner.X + (width / 2), corner.Y + (depth / 2));
        return Extrude(Step.Add("IFCRECTANGLEPROFILEDEF", new Keyword("AREA"), null, middle, width, depth), position, extrusion);
    }

    public Reference Extrude(Reference profile, Reference? position, double depth) =>
        Step.Add("IFCEXTRUDEDAREASOLID", profile, position ?? Axes(0, 0, 0), Direction(0, 0, 1), depth);
}
