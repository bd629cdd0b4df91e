using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace IfcCourser.Output.Ids;

/// <summary>
/// The elements of an IDS 1.0 file (Information Delivery Specification, published schema ids.xsd version 1.0.0, read). Values of measures are in
/// SI units, whatever the model's are.
/// </summary>
internal static class IdsXml
{
    private const string Versions = "IFC2X3 IFC4 IFC4X3_ADD2";

    private static readonly XNamespace _ids = "http://standards.buildingsmart.org/IDS";
    private static readonly XNamespace _xs = "http://www.w3.org/2001/XMLSchema";
    private static readonly XNamespace _xsi = "http://www.w3.org/2001/XMLSchema-instance";

    /// <summary>Walls of every kind; names are exact, a subtype is not found by its supertype's name.</summary>
    public static XElement Walls => Entity("IFCWALL", "IFCWALLSTANDARDCASE", "IFCWALLELEMENTEDCASE");

    public static void Write(Stream stream, string title, string description, string purpose, params XElement[] specifications)
    {
        // The schema takes an author by e-mail only; the top-level domain is reserved for documentation (RFC 2606).
        var info = new XElement(
            _ids + "info",
            Text("title", title),
            Text("version", IfcWriteBack.Generator.Version),
            Text("description", description),
            Text("author", "ids@ifccourser.example"),
            Text("purpose", purpose));
        var root = new XElement(
            _ids + "ids",
            new XAttribute(XNamespace.Xmlns + "xs", _xs),
            new XAttribute(XNamespace.Xmlns + "xsi", _xsi),
            new XAttribute(_xsi + "schemaLocation", $"{_ids} {_ids}/1.0/ids.xsd"),
            info,
            new XElement(_ids + "specifications", specifications));
        var settings = new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" };
        using var writer = XmlWriter.Create(stream, settings);
        new XDocument(root).Save(writer);
    }

    /// <param name="isNeeded">Whether something that it applies to must be there.</param>
    /// <param name="applicability">Facets in the order entity, partOf, property, material.</param>
    public static XElement Specification(string name, string description, bool isNeeded, XElement[] applicability, params XElement[] requirements) => new(
        _ids + "specification",
        new XAttribute("name", name),
        new XAttribute("ifcVersion", Versions),
        new XAttribute("description", description),
        new XElement(
            _ids + "applicability", new XAttribute("minOccurs", isNeeded ? "1" : "0"), new XAttribute("maxOccurs", "unbounded"), applicability),
        new XElement(_ids + "requirements", requirements));

    /// <param name="names">Upper-case.</param>
    public static XElement Entity(params string[] names) => new(_ids + "entity", Value("name", OneOf(names)));

    /// <param name="relation">Of the schema's list.</param>
    public static XElement PartOf(string relation, XElement entity) => new(_ids + "partOf", new XAttribute("relation", relation), entity);

    /// <param name="dataType">Such as IFCLABEL.</param>
    /// <param name="value">What it must be; null where it must only be there.</param>
    public static XElement Property(XElement set, string name, string dataType, XElement? value = null) => new(
        _ids + "property",
        new XAttribute("dataType", dataType),
        Value("propertySet", set),
        Value("baseName", Is(name)),
        value is null ? null : Value("value", value));

    /// <param name="value">What the name of one of its materials, layers or sets must be; null for any.</param>
    public static XElement Material(XElement? value) => new(_ids + "material", value is null ? null : Value("value", value));

    /// <summary>The facet with a sentence for those who make the model.</summary>
    public static XElement Told(this XElement facet, string instructions)
    {
        facet.SetAttributeValue("instructions", instructions);
        return facet;
    }

    public static XElement Is(string value) => Text("simpleValue", value);

    public static XElement OneOf(params string[] values) => values is [var single]
        ? Is(single)
        : Restriction("string", [.. values.Select(value => ("enumeration", value))]);

    /// <param name="pattern">An XML Schema regular expression for the whole value.</param>
    public static XElement Matching(string pattern) => Restriction("string", ("pattern", pattern));

    public static XElement AtLeast(double si) => Restriction("double", ("minInclusive", si.ToString(CultureInfo.InvariantCulture)));

    private static XElement Restriction(string type, params (string Name, string Value)[] facets) => new(
        _xs + "restriction", new XAttribute("base", $"xs:{type}"), facets.Select(facet => new XElement(_xs + facet.Name, new XAttribute("value", facet.Value))));

    private static XElement Value(string name, XElement value) => new(_ids + name, value);

    private static XElement Text(string name, string text) => new(_ids + name, text);
}
