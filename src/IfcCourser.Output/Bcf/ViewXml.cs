using System.Globalization;
using System.Xml.Linq;
using IfcCourser.Geometry;

namespace IfcCourser.Output.Bcf;

/// <summary>A viewpoint file (.bcfv), elements in the order of visinfo.xsd of BCF 2.1 and of 3.0.</summary>
internal static class ViewXml
{
    /// <param name="guid">Of the viewpoint.</param>
    /// <param name="camera">Where it is seen from.</param>
    /// <param name="selected">GlobalIds of what is selected.</param>
    /// <param name="version">Which schema.</param>
    public static XElement Of(string guid, IssueCamera camera, IEnumerable<string> selected, BcfVersion version)
    {
        var components = selected.Select(id => new XElement("Component", new XAttribute("IfcGuid", id))).ToList();
        var selection = components.Count == 0 ? null : new XElement("Selection", components);
        var hints = new XElement("ViewSetupHints", new XAttribute("SpacesVisible", false), new XAttribute("SpaceBoundariesVisible", false), new XAttribute("OpeningsVisible", true));
        var visible = new XAttribute("DefaultVisibility", true);
        return new XElement(
            "VisualizationInfo",
            new XAttribute("Guid", guid),
            version == BcfVersion.V21
                ? new XElement("Components", hints, selection, new XElement("Visibility", visible))
                : new XElement("Components", selection, new XElement("Visibility", visible, hints)),
            new XElement(
                "PerspectiveCamera",
                Coordinates("CameraViewPoint", camera.At),
                Coordinates("CameraDirection", camera.Towards),
                Coordinates("CameraUpVector", camera.Up),
                new XElement("FieldOfView", Number(IssueCamera.FieldOfView)),
                version == BcfVersion.V21 ? null : new XElement("AspectRatio", Number(IssueCamera.AspectRatio))));
    }

    private static XElement Coordinates(string name, Vector3 v) =>
        new(name, new XElement("X", Number(v.X)), new XElement("Y", Number(v.Y)), new XElement("Z", Number(v.Z)));

    /// <summary>To a micrometre, without a negative zero.</summary>
    private static string Number(double value) => (Math.Round(value, 6) + 0.0).ToString("0.######", CultureInfo.InvariantCulture);
}
