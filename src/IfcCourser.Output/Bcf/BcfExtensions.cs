namespace IfcCourser.Output.Bcf;

/// <summary>The words that topics of a file may use, each list sorted (extensions.xsd of BCF 3.0).</summary>
public sealed record BcfExtensions
{
    /// <summary>Element of the list and of its entries, in the order of the schema.</summary>
    internal static readonly ImmutableArray<(string List, string Entry)> Names =
    [
        ("TopicTypes", "TopicType"), ("TopicStatuses", "TopicStatus"), ("Priorities", "Priority"), ("TopicLabels", "TopicLabel"), ("Users", "User"),
        ("SnippetTypes", "SnippetType"), ("Stages", "Stage"),
    ];

    /// <summary>Words by the name of their list.</summary>
    public ImmutableSortedDictionary<string, ImmutableSortedSet<string>> Words { get; init; } =
        ImmutableSortedDictionary.Create<string, ImmutableSortedSet<string>>(StringComparer.Ordinal);

    /// <summary>With more words in a list; blank ones are none.</summary>
    public BcfExtensions With(string list, params IEnumerable<string?> words) => this with
    {
        Words = Words.SetItem(list, Words.GetValueOrDefault(list, ImmutableSortedSet.Create<string>(StringComparer.Ordinal)).Union(words.Where(word => !string.IsNullOrWhiteSpace(word))!)),
    };

    /// <summary>With every word that a topic uses.</summary>
    public BcfExtensions With(BcfTopic topic) => With("TopicTypes", topic.Type).With("TopicStatuses", topic.Status).With("Priorities", topic.Priority)
        .With("TopicLabels", topic.Labels).With("Stages", topic.Stage)
        .With("Users", [topic.CreationAuthor, topic.ModifiedAuthor, topic.AssignedTo, .. topic.Comments.SelectMany(comment => new[] { comment.Author, comment.ModifiedAuthor })]);

    public BcfExtensions With(BcfExtensions other) => other.Words.Aggregate(this, (all, list) => all.With(list.Key, list.Value));
}
