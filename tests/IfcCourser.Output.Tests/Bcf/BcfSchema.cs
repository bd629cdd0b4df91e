using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using IfcCourser.Output.Bcf;

namespace IfcCourser.Output.Tests.Bcf;

/// <summary>
/// The rules of buildingSMART's BCF-XML schemas (markup.xsd, visinfo.xsd, extensions.xsd, project.xsd, version.xsd and shared-types.xsd of branches release_2_1 and
/// release_3_0, read), for the elements that we write: attributes with @, then children in their order; ? optional, * any number, + at least one; a type after the colon.
/// Elements without a line here hold text.
/// </summary>
internal static partial class BcfSchema
{
    private const string Shared = """
        Point: X:double Y:double Z:double
        CameraViewPoint: X:double Y:double Z:double
        CameraDirection: X:double Y:double Z:double
        CameraUpVector: X:double Y:double Z:double
        Component: @IfcGuid:IfcGuid? OriginatingSystem:text? AuthoringToolId:text?
        ViewSetupHints: @SpacesVisible:boolean? @SpaceBoundariesVisible:boolean? @OpeningsVisible:boolean?
        RelatedTopic: @Guid:Guid
        """;

    private const string V21 = """
        Markup: Header? Topic Comment* Viewpoints*
        Header: File+
        File: @IfcProject:IfcGuid? @IfcSpatialStructureElement:IfcGuid? @isExternal:boolean? Filename:any? Date:dateTime? Reference:any?
        Topic: @Guid:Guid @TopicType:any? @TopicStatus:any? ReferenceLink:any* Title:any Priority:any? Index:int? Labels:any* CreationDate:dateTime CreationAuthor:any ModifiedDate:dateTime? ModifiedAuthor:any? DueDate:dateTime? AssignedTo:any? Stage:any? Description:any? BimSnippet? DocumentReference* RelatedTopic*
        Comment: @Guid:Guid Date:dateTime Author:any Comment:any Viewpoint:reference? ModifiedDate:dateTime? ModifiedAuthor:any?
        Viewpoints: @Guid:Guid Viewpoint:any? Snapshot:any? Index:int?
        VisualizationInfo: @Guid:Guid Components? OrthogonalCamera? PerspectiveCamera? Lines? ClippingPlanes? Bitmap*
        Components: ViewSetupHints? Selection? Visibility Coloring?
        Selection: Component+
        Visibility: @DefaultVisibility:boolean? Exceptions?
        PerspectiveCamera: CameraViewPoint CameraDirection CameraUpVector FieldOfView:angle21
        Version: @VersionId:any? DetailedVersion:any?
        ProjectExtension: Project? ExtensionSchema:any
        Project: @ProjectId:any Name:any?
        """;

    private const string V30 = """
        Markup: Header? Topic
        Header: Files?
        Files: File*
        File: @IfcProject:IfcGuid? @IfcSpatialStructureElement:IfcGuid? @IsExternal:boolean? Filename:text? Date:dateTime? Reference:text?
        Topic: @Guid:lowerGuid @ServerAssignedId:text? @TopicType:text @TopicStatus:text ReferenceLinks? Title:text Priority:text? Index:int? Labels? CreationDate:dateTime CreationAuthor:text ModifiedDate:dateTime? ModifiedAuthor:text? DueDate:dateTime? AssignedTo:text? Stage:text? Description:text? BimSnippet? DocumentReferences? RelatedTopics? Comments? Viewpoints?
        ReferenceLinks: ReferenceLink:text*
        Labels: Label:text*
        RelatedTopics: RelatedTopic*
        Comments: Comment*
        Comment: @Guid:lowerGuid Date:dateTime Author:text Comment:text? Viewpoint:reference? ModifiedDate:dateTime? ModifiedAuthor:text?
        Viewpoints: ViewPoint*
        ViewPoint: @Guid:lowerGuid Viewpoint:text? Snapshot:text? Index:int?
        VisualizationInfo: @Guid:lowerGuid Components? PerspectiveCamera Lines? ClippingPlanes? Bitmaps?
        Components: Selection? Visibility? Coloring?
        Selection: Component*
        Visibility: @DefaultVisibility:boolean? ViewSetupHints? Exceptions?
        PerspectiveCamera: CameraViewPoint CameraDirection CameraUpVector FieldOfView:angle30 AspectRatio:positive
        Version: @VersionId:any
        ProjectInfo: Project
        Project: @ProjectId:text Name:text?
        Extensions: TopicTypes? TopicStatuses? Priorities? TopicLabels? Users? SnippetTypes? Stages?
        TopicTypes: TopicType:text*
        TopicStatuses: TopicStatus:text*
        Priorities: Priority:text*
        TopicLabels: TopicLabel:text*
        Users: User:text*
        SnippetTypes: SnippetType:text*
        Stages: Stage:text*
        """;

    private static readonly Dictionary<BcfVersion, Dictionary<string, List<Part>>> _rules = new()
    {
        [BcfVersion.V21] = Rules(Shared + "\n" + V21),
        [BcfVersion.V30] = Rules(Shared + "\n" + V30),
    };

    /// <summary>A line for every rule that does not hold.</summary>
    public static IEnumerable<string> Breaches(XElement element, BcfVersion version, string type = "")
    {
        if (type == "reference")
        {
            return Leaf(element, "any").Concat(Value(element.Attribute("Guid")?.Value, "Guid", $"{element.Name}/@Guid"));
        }

        return type.Length == 0 && _rules[version].TryGetValue(element.Name.LocalName, out var parts) ? Structure(element, parts, version) : Leaf(element, type);
    }

    private static IEnumerable<string> Structure(XElement element, List<Part> parts, BcfVersion version)
    {
        var name = element.Name.LocalName;
        foreach (var attribute in element.Attributes().Where(attribute => !parts.Exists(part => part.IsAttribute && part.Name == attribute.Name.LocalName)))
        {
            yield return $"{name} has no attribute {attribute.Name}";
        }

        foreach (var part in parts.Where(part => part.IsAttribute))
        {
            var value = element.Attribute(part.Name)?.Value;
            foreach (var breach in value is null ? part.Least > 0 ? [$"{name}/@{part.Name} is missing"] : [] : Value(value, part.Type, $"{name}/@{part.Name}"))
            {
                yield return breach;
            }
        }

        var children = new Queue<XElement>(element.Elements());
        foreach (var part in parts.Where(part => !part.IsAttribute))
        {
            var count = 0;
            for (; children.Count > 0 && children.Peek().Name.LocalName == part.Name && count < part.Most; count++)
            {
                foreach (var breach in Breaches(children.Dequeue(), version, part.Type))
                {
                    yield return $"{name}/{breach}";
                }
            }

            if (count < part.Least)
            {
                yield return $"{name}/{part.Name} is missing";
            }
        }

        if (children.Count > 0)
        {
            yield return $"{name}/{children.Peek().Name} is not allowed, or not here";
        }
    }

    private static IEnumerable<string> Leaf(XElement element, string type) =>
        element.HasElements ? [$"{element.Name} has elements"] : Value(element.Value, type.Length == 0 ? "any" : type, element.Name.LocalName);

    private static IEnumerable<string> Value(string? value, string type, string where)
    {
        var holds = value is not null && type switch
        {
            "Guid" => Guid21().IsMatch(value),
            "lowerGuid" => Guid30().IsMatch(value),
            "IfcGuid" => IfcGuid().IsMatch(value),
            "text" => !string.IsNullOrWhiteSpace(value),
            "boolean" => value is "true" or "false" or "1" or "0",
            "dateTime" => DateTime().IsMatch(value),
            "int" => int.TryParse(value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out _),
            "double" => Number(value) is not null,
            "positive" => Number(value) > 0,
            "angle21" => Number(value) is >= 45 and <= 60,
            "angle30" => Number(value) is > 0 and < 180,
            _ => true,
        };
        return holds ? [] : [$"{where}: \"{value}\" is no {type}"];
    }

    private static double? Number(string value) => double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static Dictionary<string, List<Part>> Rules(string lines) => lines.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Select(line => line.Split(':', 2))
        .ToDictionary(line => line[0], line => line[1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Part.Of).ToList(), StringComparer.Ordinal);

    [GeneratedRegex("^[a-fA-F0-9]{8}-([a-fA-F0-9]{4}-){3}[a-fA-F0-9]{12}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Guid21();

    [GeneratedRegex("^[a-f0-9]{8}-([a-f0-9]{4}-){3}[a-f0-9]{12}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Guid30();

    [GeneratedRegex("^[0-9A-Za-z_$]{22}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex IfcGuid();

    [GeneratedRegex(@"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex DateTime();

    private sealed record Part(string Name, bool IsAttribute, string Type, int Least, int Most)
    {
        public static Part Of(string text)
        {
            var mark = text[^1];
            var plain = text.TrimEnd('?', '*', '+').TrimStart('@').Split(':');
            return new Part(plain[0], text[0] == '@', plain.Length > 1 ? plain[1] : string.Empty, mark is '?' or '*' ? 0 : 1, mark is '*' or '+' ? int.MaxValue : 1);
        }
    }
}
