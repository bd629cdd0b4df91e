using System.Globalization;
using System.Xml.Linq;

namespace IfcCourser.Output.Bcf;

/// <summary>markup.bcf, elements in the order of markup.xsd of BCF 2.1 and of 3.0.</summary>
internal static class MarkupXml
{
    private const string FallbackStatus = "Open";

    public static XElement Of(BcfTopic topic, BcfVersion version) => version == BcfVersion.V21
        ? new XElement("Markup", Header(topic, version), Topic(topic, version), topic.Comments.Select(Comment21), topic.Viewpoints.Select(view => View("Viewpoints", view)))
        : new XElement("Markup", Header(topic, version), Topic(topic, version));

    private static XElement? Header(BcfTopic topic, BcfVersion version)
    {
        var files = topic.Files.Select(file => new XElement(
            "File",
            Attribute("IfcProject", file.IfcProject),
            Attribute("IfcSpatialStructureElement", file.SpatialElement),
            new XAttribute(version == BcfVersion.V21 ? "isExternal" : "IsExternal", file.IsExternal),
            Text("Filename", file.Name), Text("Date", file.Date), Text("Reference", file.Reference)));
        return topic.Files.IsEmpty ? null : version == BcfVersion.V21 ? new XElement("Header", files) : new XElement("Header", new XElement("Files", files));
    }

    private static XElement Topic(BcfTopic topic, BcfVersion version)
    {
        var isOld = version == BcfVersion.V21;
        return new XElement(
            "Topic",
            new XAttribute("Guid", isOld ? topic.Guid : topic.Guid.ToLowerInvariant()),
            isOld ? null : Attribute("ServerAssignedId", topic.ServerAssignedId),
            Attribute("TopicType", Said(topic.Type) ?? (isOld ? null : IssueText.IssueType)),
            Attribute("TopicStatus", Said(topic.Status) ?? (isOld ? null : FallbackStatus)),
            Many(isOld ? null : "ReferenceLinks", topic.ReferenceLinks.Select(link => Text("ReferenceLink", link))),
            new XElement("Title", XmlText.Of(topic.Title)),
            Text("Priority", topic.Priority),
            Text("Index", topic.Index),
            Many(isOld ? null : "Labels", topic.Labels.Select(label => Text(isOld ? "Labels" : "Label", label))),
            Text("CreationDate", topic.CreationDate), Text("CreationAuthor", topic.CreationAuthor),
            Text("ModifiedDate", topic.ModifiedDate), Text("ModifiedAuthor", topic.ModifiedAuthor),
            Text("DueDate", topic.DueDate), Text("AssignedTo", topic.AssignedTo), Text("Stage", topic.Stage), Text("Description", topic.Description),
            topic.Extras,
            Many(isOld ? null : "RelatedTopics", topic.RelatedTopics.Select(guid => new XElement("RelatedTopic", new XAttribute("Guid", guid)))),
            isOld ? null : Many("Comments", topic.Comments.Select(Comment30)),
            isOld ? null : Many("Viewpoints", topic.Viewpoints.Select(view => View("ViewPoint", view))));
    }

    /// <summary>2.1 wants the text, if an empty one.</summary>
    private static XElement Comment21(BcfComment comment) => Comment(comment, comment.Guid, new XElement("Comment", XmlText.Of(comment.Text ?? string.Empty)));

    /// <summary>3.0 wants none or one that is not blank.</summary>
    private static XElement Comment30(BcfComment comment) => Comment(comment, comment.Guid.ToLowerInvariant(), Text("Comment", comment.Text));

    private static XElement Comment(BcfComment comment, string guid, XElement? text) => new(
        "Comment",
        new XAttribute("Guid", guid),
        Text("Date", comment.Date), Text("Author", comment.Author), text,
        comment.Viewpoint is { } viewpoint ? new XElement("Viewpoint", new XAttribute("Guid", viewpoint)) : null,
        Text("ModifiedDate", comment.ModifiedDate), Text("ModifiedAuthor", comment.ModifiedAuthor));

    private static XElement View(string name, BcfViewpoint view) => new(
        name,
        new XAttribute("Guid", view.Guid),
        Text("Viewpoint", view.View), Text("Snapshot", view.Snapshot), Text("Index", view.Index?.ToString(CultureInfo.InvariantCulture)));

    /// <summary>Elements, in one of their own where it is named; nothing where there are none.</summary>
    private static List<XElement> Many(string? name, IEnumerable<XElement?> elements)
    {
        var all = elements.OfType<XElement>().ToList();
        return name is null || all.Count == 0 ? all : [new XElement(name, all)];
    }

    private static XElement? Text(string name, string? text) => Said(text) is { } said ? new XElement(name, XmlText.Of(said)) : null;

    private static XAttribute? Attribute(string name, string? text) => Said(text) is { } said ? new XAttribute(name, XmlText.Of(said)) : null;

    private static string? Said(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
