using System.Xml.Linq;

namespace IfcCourser.Output.Bcf;

/// <summary>A topic with all that is in its folder; dates as they are written (xs:dateTime).</summary>
public sealed record BcfTopic
{
    public required string Guid { get; init; }

    public string? ServerAssignedId { get; init; }

    public string? Type { get; init; }

    public string? Status { get; init; }

    public required string Title { get; init; }

    public string? Priority { get; init; }

    public string? Index { get; init; }

    public ImmutableArray<string> Labels { get; init; } = [];

    public required string CreationDate { get; init; }

    public required string CreationAuthor { get; init; }

    public string? ModifiedDate { get; init; }

    public string? ModifiedAuthor { get; init; }

    public string? DueDate { get; init; }

    public string? AssignedTo { get; init; }

    public string? Stage { get; init; }

    public string? Description { get; init; }

    public ImmutableArray<string> ReferenceLinks { get; init; } = [];

    /// <summary>GUIDs of other topics.</summary>
    public ImmutableArray<string> RelatedTopics { get; init; } = [];

    public ImmutableArray<BcfHeaderFile> Files { get; init; } = [];

    public ImmutableArray<BcfComment> Comments { get; init; } = [];

    public ImmutableArray<BcfViewpoint> Viewpoints { get; init; } = [];

    /// <summary>Snippet and documents, as the version that they were read from has them.</summary>
    internal ImmutableArray<XElement> Extras { get; init; } = [];

    /// <summary>The other files of its folder by name.</summary>
    public ImmutableSortedDictionary<string, byte[]> Attachments { get; init; } = ImmutableSortedDictionary.Create<string, byte[]>(StringComparer.Ordinal);

    /// <summary>The markup as it was read, for topics that are passed on as they are; with the folder it was in.</summary>
    internal (string Folder, byte[] Markup)? Original { get; init; }
}
