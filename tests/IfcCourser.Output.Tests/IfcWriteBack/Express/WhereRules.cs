using IfcCourser.Ifc;
using IfcCourser.Step21;

namespace IfcCourser.Output.Tests.IfcWriteBack.Express;

/// <summary>The where, unique and inverse rules of the entities that are written, by their names in IFC4 (IFC2X3 numbers them).</summary>
internal sealed class WhereRules
{
    private readonly IfcModel _model;
    private readonly ILookup<long, (IfcEntity User, string Attribute)> _users;

    private WhereRules(IfcModel model)
    {
        _model = model;
        _users = model.File.Ids.ToArray().Select(id => model.Find(id)).OfType<IfcEntity>()
            .SelectMany(entity => entity.Arguments.SelectMany((value, place) => References(value).Select(target => (target, entity, place))))
            .ToLookup(use => use.target, use => (use.entity, IfcAttributes.Of(model.Schema, use.entity.Type) is { } names && use.place < names.Length ? names[use.place] : $"{use.place}"));
    }

    public static IEnumerable<string> Broken(IfcModel model, IEnumerable<IfcEntity> added)
    {
        var rules = new WhereRules(model);
        var ids = model.File.Ids.ToArray();
        var doubled = ids.Select(id => model.Find(id)).OfType<IfcEntity>().Where(entity => IfcAttributes.Of(model.Schema, entity.Type) is ["GlobalId", ..])
            .GroupBy(entity => entity["GlobalId"].AsString, StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => $"IfcRoot UR1: {group.Key} twice");
        return doubled.Concat(added.SelectMany(entity => rules.Of(entity).Where(rule => !rule.Holds).Select(rule => $"#{entity.Id} {entity.Type} breaks {rule.Name}")));
    }

    private static IEnumerable<long> References(StepValue value) =>
        value.AsReference is { } id ? [id] : value.AsList.SelectMany(References);

    private IEnumerable<(string Name, bool Holds)> Of(IfcEntity e) => e.Type switch
    {
        "IFCPROPERTYSET" => [("UniquePropertyNames", AreUnique(e["HasProperties"])), ("ExistsName", e["Name"].AsString is not null)],
        "IFCELEMENTQUANTITY" => [("UniqueQuantityNames", AreUnique(e["Quantities"])), ("ExistsName", e["Name"].AsString is not null)],
        "IFCRELAGGREGATES" => [("NoSelfReference", !References(e["RelatedObjects"]).Contains(e["RelatingObject"].AsReference!.Value)),
            ("Decomposes [0:1]", References(e["RelatedObjects"]).All(part => Count(part, "IFCRELAGGREGATES", "RelatedObjects") == 1 && Count(part, "IFCRELCONTAINEDINSPATIALSTRUCTURE") == 0))],
        "IFCRELCONTAINEDINSPATIALSTRUCTURE" => [("WrongRelatedElements", Types(e["RelatedElements"]).All(type => type is "IFCGRID")),
            ("ContainedInStructure [0:1]", References(e["RelatedElements"]).All(part => Count(part, e.Type) == 1))],
        "IFCSHAPEREPRESENTATION" => [("CorrectItemsForType", ItemsFit(e)),
            ("WR11 of IfcShapeModel", Count(e.Id, "IFCPRODUCTDEFINITIONSHAPE") + Count(e.Id, "IFCREPRESENTATIONMAP") + Count(e.Id, "IFCSHAPEASPECT") == 1)],
        "IFCPRODUCTDEFINITIONSHAPE" => [("OnlyShapeModel", Types(e.Arguments[2]).All(type => type is "IFCSHAPEREPRESENTATION")),
            ("ShapeOfProduct", _model.Schema == IfcSchema.Ifc2X3 ? Products(e.Id, "Representation") == 1 : Products(e.Id, "Representation") >= 1)],
        "IFCLOCALPLACEMENT" => [("PlacesObject", Products(e.Id, "ObjectPlacement") == 1)],
        "IFCREPRESENTATIONMAP" => [("ApplicableMappedRepresentation", Types(e.Arguments[1]).All(type => type is "IFCSHAPEREPRESENTATION")), ("used", Count(e.Id, "IFCMAPPEDITEM") > 0)],
        "IFCPOLYLINE" => [("SameDim", Points(e).Select(point => point.Length).Distinct().Count() == 1)],
        "IFCARBITRARYCLOSEDPROFILEDEF" => [("WR1", Points(_model.Follow(e.Arguments[2])!.Value).All(point => point.Length == 2)), ("closed", IsClosed(_model.Follow(e.Arguments[2])!.Value))],
        "IFCGRIDAXIS" => [("WR1", Points(_model.Follow(e["AxisCurve"])!.Value).All(point => point.Length == 2)), ("WR2", Count(e.Id, "IFCGRID") == 1)],
        "IFCGRID" => [("HasPlacement", e["ObjectPlacement"].AsReference is not null)],
        "IFCAXIS2PLACEMENT3D" => [("AxisAndRefDirProvision", e["Axis"].IsNothing == e["RefDirection"].IsNothing), ("AxisToRefDirPosition", AreNotParallel(e["Axis"], e["RefDirection"]))],
        "IFCDIRECTION" => [("MagnitudeGreaterZero", e.Arguments[0].AsList.Any(ratio => ratio.AsReal is not 0))],
        "IFCEXTRUDEDAREASOLID" => [("ValidExtrusionDirection", _model.Follow(e.Arguments[2])!.Value.Arguments[0].AsList[2].AsReal is not 0)],
        "IFCSWEPTDISKSOLID" => [("DirectrixDim", Points(_model.Follow(e.Arguments[0])!.Value).All(point => point.Length == 3))],
        "IFCBEAM" or "IFCBUILDINGELEMENTPART" or "IFCREINFORCINGBAR" => [("CorrectPredefinedType", !e.Arguments.Any(value => value.AsEnumeration is "USERDEFINED") || e["ObjectType"].AsString is { Length: > 0 } || e.Arguments[4].AsString is { Length: > 0 })],
        "IFCOWNERHISTORY" => [("CorrectChangeAction", !e["LastModifiedDate"].IsNothing)],
        "IFCPERSON" => [("IdentifiablePerson", !e["FamilyName"].IsNothing || !e["GivenName"].IsNothing)],
        "IFCSURFACESTYLE" => [("MaxOneShading", e.Arguments[2].AsList.Length == 1)],
        "IFCSTYLEDITEM" => [("StyledByItem [0:1]", Count(e.Arguments[0].AsReference!.Value, e.Type) == 1)],
        _ => [],
    };

    private bool AreUnique(StepValue list) =>
        list.AsList.Select(item => _model.Follow(item)!.Value.Arguments[0].AsString).Distinct(StringComparer.Ordinal).Count() == list.AsList.Length;

    private int Count(long id, string user) => _users[id].Count(use => use.User.Type == user);

    private int Count(long id, string user, string attribute) => _users[id].Count(use => use.User.Type == user && use.Attribute == attribute);

    /// <summary>Products by the places of ObjectPlacement and Representation, which all of them share.</summary>
    private int Products(long id, string attribute) => _users[id].Count(use => use.User.Arguments is { Length: > 6 } arguments
        && arguments[0].AsString?.Length == 22 && arguments[attribute is "ObjectPlacement" ? 5 : 6].AsReference == id);

    private IEnumerable<string?> Types(StepValue value) => References(value).Select(_model.File.TypeOf);

    private bool ItemsFit(IfcEntity representation) => Types(representation["Items"]).All(type => (representation["RepresentationType"].AsString, type) is
        ("SweptSolid", "IFCEXTRUDEDAREASOLID") or ("AdvancedSweptSolid", "IFCSWEPTDISKSOLID") or ("MappedRepresentation", "IFCMAPPEDITEM") or ("GeometricCurveSet", "IFCGEOMETRICCURVESET"));

    private List<double[]> Points(IfcEntity polyline) =>
        [.. polyline.Arguments[0].AsList.Select(point => _model.Follow(point)!.Value.Arguments[0].AsList.Select(value => value.AsReal!.Value).ToArray())];

    private bool IsClosed(IfcEntity polyline) => Points(polyline) is { Count: > 3 } points && points[0].SequenceEqual(points[^1]);

    private bool AreNotParallel(StepValue axis, StepValue reference)
    {
        if (_model.Direction(axis) is not { } z || _model.Direction(reference) is not { } x)
        {
            return axis.IsNothing && reference.IsNothing;
        }

        return Geometry.Vector3.Cross(z, x).Length > 1e-6;
    }
}
