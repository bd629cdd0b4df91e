using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>Shapes that several parts share: each is written once, as a representation map, and stands in every part by a mapped item.</summary>
internal sealed class SharedShapes(GeometryWriter geometry, PartStyles styles)
{
    private readonly Dictionary<string, StepValue> _maps = new(StringComparer.Ordinal);
    private readonly Lazy<StepValue> _inPlace = new(() => geometry.Add(
        "IFCCARTESIANTRANSFORMATIONOPERATOR3D", StepValue.Omitted, StepValue.Omitted, geometry.Point(default(Vector3)), StepValue.Omitted, StepValue.Omitted));

    /// <summary>The product definition shape of one more part.</summary>
    /// <param name="kind">Equal for parts of equal shape.</param>
    /// <param name="solid">Writes the solid where it is the first of its kind; tells its representation type and item.</param>
    public StepValue Add(PartLayer layer, string kind, Func<(string Type, StepValue Item)> solid)
    {
        if (!_maps.TryGetValue(kind, out var map))
        {
            var (type, item) = solid();
            styles.Colour(layer, item);
            map = geometry.Add("IFCREPRESENTATIONMAP", geometry.Axes(Transform3.Identity), Representation(type, item));
            _maps.Add(kind, map);
        }

        var representation = Representation("MappedRepresentation", geometry.Add("IFCMAPPEDITEM", map, _inPlace.Value));
        styles.Assign(layer, representation);
        return geometry.Add("IFCPRODUCTDEFINITIONSHAPE", StepValue.Omitted, StepValue.Omitted, StepValue.List(representation));
    }

    private StepValue Representation(string type, StepValue item) => geometry.Add(
        "IFCSHAPEREPRESENTATION", geometry.BodyContext, StepValue.String("Body"), StepValue.String(type), StepValue.List(item));
}
