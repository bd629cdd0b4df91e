using IfcCourser.Layouts;

namespace IfcCourser.Output.Bcf;

/// <summary>Our topics, joined with a file that came back with answers.</summary>
/// <param name="File">What is to be written.</param>
/// <param name="Ours">Topics of this run.</param>
/// <param name="Closed">Of them, those that are not open any more.</param>
/// <param name="Answered">Of them, those on which others have commented.</param>
/// <param name="Gone">Topics of ours that came back and are no longer found; passed on as they are.</param>
/// <param name="Others">Topics of others that are passed on as they are.</param>
/// <param name="Dropped">Topics that are not passed on, because they are of the other version.</param>
public sealed record BcfReplies(BcfFile File, int Ours, int Closed, int Answered, int Gone, int Others, int Dropped)
{
    /// <param name="layout">Whose findings become topics.</param>
    /// <param name="version">Of the file to be written; null: that of the one returned, else 3.0.</param>
    /// <param name="returned">The file that came back, if any.</param>
    public static BcfReplies Join(Layout layout, BcfVersion? version, BcfFile? returned)
    {
        var written = version ?? returned?.Version ?? BcfVersion.V30;
        var isSame = written == returned?.Version;
        var theirs = (returned?.Topics ?? []).ToDictionary(topic => topic.Guid, StringComparer.OrdinalIgnoreCase);
        ImmutableArray<BcfTopic> ours = [.. new IssueTopics(layout, written).All().Select(topic => theirs.TryGetValue(topic.Guid, out var back) ? Joined(topic, back, isSame) : topic)];
        var known = ours.Select(topic => topic.Guid).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var rest = (returned?.Topics ?? []).Where(topic => !known.Contains(topic.Guid)).ToList();
        var gone = rest.Count(topic => string.Equals(topic.CreationAuthor, IssueText.Author, StringComparison.Ordinal));
        ImmutableArray<BcfTopic> topics = isSame ? [.. ours, .. rest] : ours;
        var extensions = new BcfExtensions().With("TopicTypes", IssueText.Types).With("TopicStatuses", IssueText.Statuses).With("Priorities", IssueText.Priorities);
        extensions = returned is null ? extensions : extensions.With(returned.Extensions);
        var project = layout.Model.ProjectId ?? returned?.ProjectId;
        var file = new BcfFile(
            written, project, layout.Model.ProjectName ?? returned?.ProjectName, topics, topics.Aggregate(extensions, (all, topic) => all.With(topic)), StampTime.Of(layout.Model.Date));
        return new BcfReplies(
            isSame ? file with { Others = returned!.Others } : file,
            ours.Length,
            ours.Count(topic => !string.Equals(topic.Status, IssueText.Open, StringComparison.OrdinalIgnoreCase)),
            ours.Count(topic => topic.Comments.Any(comment => !string.Equals(comment.Author, IssueText.Author, StringComparison.Ordinal))),
            isSame ? gone : 0,
            isSame ? rest.Count - gone : 0,
            isSame ? 0 : rest.Count);
    }

    /// <summary>What is found now, with what people have made of it.</summary>
    private static BcfTopic Joined(BcfTopic ours, BcfTopic back, bool isSame)
    {
        var isChanged = !string.Equals(ours.Title, back.Title, StringComparison.Ordinal) || !string.Equals(ours.Description, back.Description?.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        var joined = ours with
        {
            Guid = isSame ? back.Guid : ours.Guid,
            ServerAssignedId = back.ServerAssignedId,
            Type = Said(back.Type) ?? ours.Type,
            Status = Said(back.Status) ?? ours.Status,
            Priority = Said(back.Priority) ?? ours.Priority,
            Index = back.Index,
            Labels = [.. ours.Labels.Union(back.Labels, StringComparer.Ordinal)],
            CreationDate = Said(back.CreationDate) ?? ours.CreationDate,
            CreationAuthor = Said(back.CreationAuthor) ?? ours.CreationAuthor,
            ModifiedDate = isChanged ? ours.CreationDate : back.ModifiedDate,
            ModifiedAuthor = isChanged ? ours.CreationAuthor : back.ModifiedAuthor,
            DueDate = back.DueDate,
            AssignedTo = back.AssignedTo,
            Stage = back.Stage,
            ReferenceLinks = back.ReferenceLinks,
            RelatedTopics = back.RelatedTopics,
        };
        return isSame ? WithFiles(joined, back) : joined with { Comments = Comments(back.Comments.Select(comment => comment with { Viewpoint = null }), ours) };
    }

    /// <summary>With the viewpoints, pictures and documents that came back; where a name is taken, ours have names of their own.</summary>
    private static BcfTopic WithFiles(BcfTopic joined, BcfTopic back)
    {
        var views = joined.Viewpoints.Where(view => !back.Viewpoints.Any(other => string.Equals(other.Guid, view.Guid, StringComparison.OrdinalIgnoreCase)))
            .Select(view => (Old: view, New: view with { View = Free(view.View, view.Guid, back), Snapshot = Free(view.Snapshot, view.Guid, back) })).ToList();
        var files = views.SelectMany(pair => new[] { (pair.Old.View, pair.New.View), (pair.Old.Snapshot, pair.New.Snapshot) })
            .Where(name => name.Item1 is not null)
            .Aggregate(back.Attachments, (all, name) => all.SetItem(name.Item2!, joined.Attachments[name.Item1!]));
        return joined with
        {
            Viewpoints = [.. back.Viewpoints, .. views.Select(pair => pair.New)],
            Attachments = files,
            Extras = back.Extras,
            Comments = Comments(back.Comments, joined),
        };
    }

    private static string? Free(string? name, string guid, BcfTopic back) =>
        name is null || !back.Attachments.ContainsKey(name) ? name : guid + Path.GetExtension(name);

    /// <summary>Theirs as they are, then ours that are not among them.</summary>
    private static ImmutableArray<BcfComment> Comments(IEnumerable<BcfComment> back, BcfTopic ours)
    {
        var theirs = back.ToImmutableArray();
        return [.. theirs, .. ours.Comments.Where(comment => !theirs.Any(other => string.Equals(other.Guid, comment.Guid, StringComparison.OrdinalIgnoreCase)))];
    }

    private static string? Said(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
