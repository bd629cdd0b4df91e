using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Step21;
using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>
/// The solids of parts in their own axes: x along the wall, z up, from their lower end on the wall's left face; the wall's thickness
/// lies at negative y.
/// </summary>
internal sealed class PartSolids(GeometryWriter geometry)
{
    private const string Swept = "SweptSolid";

    private static readonly Transform3 _upright = new(default, new Vector3(1, 0, 0), new Vector3(0, 0, 1), new Vector3(0, -1, 0));

    /// <summary>A box: its face in the elevation, extruded over the thickness.</summary>
    public (string Type, StepValue Item) Box(Length length, Length height, Length thickness)
    {
        var middle = geometry.Add("IFCAXIS2PLACEMENT2D", geometry.Point(new Vector2(length.Mm / 2, height.Mm / 2)), StepValue.Omitted);
        var face = geometry.Add(
            "IFCRECTANGLEPROFILEDEF", StepValue.Enumeration("AREA"), StepValue.Omitted, middle, geometry.Number(length), geometry.Number(height));
        return (Swept, Extruded(face, _upright, thickness));
    }

    /// <summary>A face of any outline, extruded over the thickness.</summary>
    /// <param name="face">From the part's lower left corner, mm.</param>
    public (string Type, StepValue Item) Face(IEnumerable<Vector2> face, Length thickness) =>
        (Swept, Extruded(Profile(face), _upright, thickness));

    /// <summary>A trough: its cross-section, extruded along the wall.</summary>
    public (string Type, StepValue Item) Trough(Length length, Length height, Length thickness, TroughUnit unit)
    {
        // Seen against the wall's direction: from the left face to the right one, and up.
        var across = new Transform3(default, new Vector3(0, -1, 0), new Vector3(0, 0, 1), new Vector3(-1, 0, 0));
        var (t, h, shell, bottom) = (thickness.Mm, height.Mm, unit.Shell.Mm, unit.Bottom.Mm);
        Vector2[] section =
        [
            new(0, 0), new(t, 0), new(t, h), new(t - shell, h), new(t - shell, bottom), new(shell, bottom), new(shell, h), new(0, h),
        ];
        return (Swept, Extruded(Profile(section), across with { Origin = new Vector3(length.Mm, 0, 0) }, length));
    }

    /// <summary>A round bar along a line; the line's first point is the part's origin.</summary>
    /// <param name="line">Axis of the bar, mm.</param>
    public (string Type, StepValue Item) Bar(IReadOnlyList<Vector3> line, Length diameter) => ("AdvancedSweptSolid", geometry.Add(
        "IFCSWEPTDISKSOLID",
        geometry.Polyline(line),
        geometry.Number(diameter.Mm / 2),
        StepValue.Omitted,
        StepValue.Real(0),
        StepValue.Real(line.Count - 1)));

    private StepValue Profile(IEnumerable<Vector2> corners)
    {
        var points = corners.Select(geometry.Point).ToList();
        var curve = geometry.Add("IFCPOLYLINE", StepValue.List([.. points, points[0]]));
        return geometry.Add("IFCARBITRARYCLOSEDPROFILEDEF", StepValue.Enumeration("AREA"), StepValue.Omitted, curve);
    }

    private StepValue Extruded(StepValue profile, Transform3 position, Length depth) => geometry.Add(
        "IFCEXTRUDEDAREASOLID", profile, geometry.Axes(position), geometry.Direction(new Vector3(0, 0, 1)), geometry.Number(depth));
}
