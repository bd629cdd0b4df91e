using System.Globalization;
using System.Xml.Linq;

namespace IfcCourser.Output.Bcf;

/// <summary>Reads markup.bcf of BCF 2.1 and 3.0.</summary>
internal static class MarkupReader
{
    /// <summary>The topic; null where the markup has none with a GUID.</summary>
    public static BcfTopic? Read(XElement markup, BcfVersion version)
    {
        var isOld = version == BcfVersion.V21;
        if (markup.Element("Topic") is not { } topic || topic.Attribute("Guid")?.Value is not { } guid || !Guid.TryParse(guid, out _))
        {
            return null;
        }

        return new BcfTopic
        {
            Guid = guid,
            ServerAssignedId = Attribute(topic, "ServerAssignedId"),
            Type = Attribute(topic, "TopicType"),
            Status = Attribute(topic, "TopicStatus"),
            Title = Text(topic, "Title") ?? string.Empty,
            Priority = Text(topic, "Priority"),
            Index = Text(topic, "Index"),
            Labels = Texts(isOld ? topic.Elements("Labels") : topic.Elements("Labels").Elements("Label")),
            CreationDate = Text(topic, "CreationDate") ?? string.Empty,
            CreationAuthor = Text(topic, "CreationAuthor") ?? string.Empty,
            ModifiedDate = Text(topic, "ModifiedDate"),
            ModifiedAuthor = Text(topic, "ModifiedAuthor"),
            DueDate = Text(topic, "DueDate"),
            AssignedTo = Text(topic, "AssignedTo"),
            Stage = Text(topic, "Stage"),
            Description = Text(topic, "Description"),
            ReferenceLinks = Texts(isOld ? topic.Elements("ReferenceLink") : topic.Elements("ReferenceLinks").Elements("ReferenceLink")),
            RelatedTopics = [.. (isOld ? topic.Elements("RelatedTopic") : topic.Elements("RelatedTopics").Elements("RelatedTopic")).Select(GuidOf).OfType<string>()],
            Files = [.. (isOld ? markup.Elements("Header") : markup.Elements("Header").Elements("Files")).Elements("File").Select(file => HeaderFile(file, isOld))],
            Comments = [.. (isOld ? markup.Elements("Comment") : topic.Elements("Comments").Elements("Comment")).Select(Comment).OfType<BcfComment>()],
            Viewpoints = [.. (isOld ? markup.Elements("Viewpoints") : topic.Elements("Viewpoints").Elements("ViewPoint")).Select(View).OfType<BcfViewpoint>()],
            Extras = [.. topic.Elements().Where(element => element.Name.LocalName is "BimSnippet" or "DocumentReference" or "DocumentReferences").Select(element => new XElement(element))],
        };
    }

    private static BcfHeaderFile HeaderFile(XElement file, bool isOld) => new(
        file.Attribute("IfcProject")?.Value,
        file.Attribute("IfcSpatialStructureElement")?.Value,
        file.Attribute(isOld ? "isExternal" : "IsExternal")?.Value is not ("false" or "0"),
        file.Element("Filename")?.Value,
        file.Element("Date")?.Value,
        file.Element("Reference")?.Value);

    private static BcfComment? Comment(XElement comment) => GuidOf(comment) is not { } guid ? null : new BcfComment(
        guid,
        comment.Element("Date")?.Value ?? string.Empty,
        comment.Element("Author")?.Value ?? string.Empty,
        comment.Element("Comment")?.Value,
        comment.Element("Viewpoint") is { } viewpoint ? GuidOf(viewpoint) : null,
        comment.Element("ModifiedDate")?.Value,
        comment.Element("ModifiedAuthor")?.Value);

    private static BcfViewpoint? View(XElement view) => GuidOf(view) is not { } guid ? null : new BcfViewpoint(
        guid,
        view.Element("Viewpoint")?.Value,
        view.Element("Snapshot")?.Value,
        int.TryParse(view.Element("Index")?.Value, NumberStyles.Integer, CultureInfo.InvariantCulture, out var index) ? index : null);

    private static string? GuidOf(XElement element) => Attribute(element, "Guid");

    private static string? Text(XElement element, string name) => element.Element(name)?.Value;

    private static string? Attribute(XElement element, string name) => element.Attribute(name)?.Value;

    private static ImmutableArray<string> Texts(IEnumerable<XElement> elements) => [.. elements.Select(element => element.Value)];
}
