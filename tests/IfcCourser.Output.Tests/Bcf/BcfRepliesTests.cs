using System.Text;
using System.Xml.Linq;
using IfcCourser.Output.Bcf;

namespace IfcCourser.Output.Tests.Bcf;

/// <summary>A file goes out, people answer, it comes back.</summary>
public sealed class BcfRepliesTests
{
    private const string Foreign = "0f0e0d0c-0b0a-4908-8706-050403020100";

    [Theory]
    [InlineData(BcfVersion.V21)]
    [InlineData(BcfVersion.V30)]
    public void What_is_read_again_is_what_was_written(BcfVersion version)
    {
        var written = BcfReplies.Join(BcfSamples.Layout, version, null).File;
        var read = BcfSamples.Read(BcfSamples.Entries(BcfSamples.Written(written))).Value!;
        Assert.Equal((written.Version, written.ProjectId, written.ProjectName), (read.Version, read.ProjectId, read.ProjectName));
        foreach (var (before, after) in written.Topics.Zip(read.Topics.OrderBy(topic => written.Topics.Select(other => other.Guid).ToList().IndexOf(topic.Guid))))
        {
            Assert.Equal((before.Guid, before.Status, before.Type, before.Priority, before.CreationDate), (after.Guid, after.Status, after.Type, after.Priority, after.CreationDate));
            Assert.Equal(before.Description!.Replace("\u0001", string.Empty, StringComparison.Ordinal), after.Description!.ReplaceLineEndings("\n"));
            Assert.Equal(before.Labels, after.Labels);
            Assert.Equal(before.Comments, after.Comments);
            Assert.Equal(before.Viewpoints, after.Viewpoints);
            Assert.Equal(before.Files, after.Files);
            Assert.Equal(before.Attachments.Keys, after.Attachments.Keys, StringComparer.Ordinal);
        }
    }

    [Theory]
    [InlineData(BcfVersion.V21)]
    [InlineData(BcfVersion.V30)]
    public void Closed_topics_stay_closed_and_answers_dates_and_topics_of_others_are_kept(BcfVersion version)
    {
        var (returned, markups) = Answered(version);
        var later = BcfSamples.Layout with { Model = BcfSamples.Layout.Model with { Date = "2026-06-01" } };
        var joined = BcfReplies.Join(later, null, BcfSamples.Read(returned).Value);

        Assert.Equal((version, 3, 1, 1, 0, 1, 0), (joined.File.Version, joined.Ours, joined.Closed, joined.Answered, joined.Gone, joined.Others, joined.Dropped));
        var entries = BcfSamples.Entries(BcfSamples.Written(joined.File));
        var again = BcfSamples.Read(entries).Value!;
        var topic = again.Topics.Single(topic => topic.Status == "Closed");
        Assert.Equal(("2026-03-01T08:00:00Z", "architect@example.org"), (topic.CreationDate, topic.AssignedTo));
        Assert.Equal(["Accepted, \"will be moved\"", "Ask the designer to accept the shift, or lay out with --openings keep."], topic.Comments.Select(comment => comment.Text).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(markups[Foreign], Encoding.UTF8.GetString(entries[$"{Foreign}/markup.bcf"]));
        Assert.Equal("a note", Encoding.UTF8.GetString(entries[$"{Foreign}/note.txt"]));
        Assert.Empty(entries.Where(entry => entry.Key.EndsWith(".bcf", StringComparison.Ordinal) || entry.Key.EndsWith(".bcfv", StringComparison.Ordinal) || entry.Key.EndsWith(".xml", StringComparison.Ordinal))
            .SelectMany(entry => BcfSchema.Breaches(BcfSamples.Xml(entry.Value), version)));
    }

    /// <summary>Into the other version the answers are carried over, not the topics of others: that is said.</summary>
    [Theory]
    [InlineData(BcfVersion.V21, BcfVersion.V30)]
    [InlineData(BcfVersion.V30, BcfVersion.V21)]
    public void Answers_are_carried_into_the_other_version(BcfVersion from, BcfVersion to)
    {
        var joined = BcfReplies.Join(BcfSamples.Layout, to, BcfSamples.Read(Answered(from).Entries).Value);
        Assert.Equal((3, 1, 1, 1), (joined.Ours, joined.Closed, joined.Answered, joined.Dropped));
        var entries = BcfSamples.Entries(BcfSamples.Written(joined.File));
        Assert.Empty(entries.Where(entry => !entry.Key.EndsWith(".png", StringComparison.Ordinal)).SelectMany(entry => BcfSchema.Breaches(BcfSamples.Xml(entry.Value), to)));
        Assert.Contains(BcfSamples.Read(entries).Value!.Topics.SelectMany(topic => topic.Comments), comment => comment.Text == "Accepted, \"will be moved\"");
    }

    /// <summary>A finding that is cured: its topic is passed on as it is and counted.</summary>
    [Fact]
    public void Topics_of_findings_that_are_gone_are_passed_on()
    {
        var wall = BcfSamples.Layout.Walls[0];
        var cured = BcfSamples.Layout with { Walls = [wall with { Findings = [.. wall.Findings.Skip(1)] }] };
        var joined = BcfReplies.Join(cured, null, BcfSamples.Read(BcfSamples.Entries(BcfSamples.Written(BcfSamples.Layout, BcfVersion.V30))).Value);
        Assert.Equal((2, 1, 0), (joined.Ours, joined.Gone, joined.Others));
        Assert.Equal(3, joined.File.Topics.Length);
    }

    /// <summary>A run after a run, with nothing answered, changes nothing but what is new.</summary>
    [Fact]
    public void A_file_that_comes_back_unanswered_is_written_as_it_was()
    {
        var first = BcfSamples.Entries(BcfSamples.Written(BcfSamples.Layout, BcfVersion.V30));
        var second = BcfSamples.Entries(BcfSamples.Written(BcfReplies.Join(BcfSamples.Layout, null, BcfSamples.Read(first).Value).File));
        Assert.Equal(first.Keys.Order(StringComparer.Ordinal), second.Keys.Order(StringComparer.Ordinal));
    }

    /// <summary>The first topic closed, assigned and answered, and a topic of somebody else with a file of its own.</summary>
    private static (Dictionary<string, byte[]> Entries, Dictionary<string, string> Markups) Answered(BcfVersion version)
    {
        var entries = BcfSamples.Entries(BcfSamples.Written(BcfSamples.Layout, version));
        var name = entries.First(entry => entry.Key.EndsWith("markup.bcf", StringComparison.Ordinal) && Encoding.UTF8.GetString(entry.Value).Contains("moved +10", StringComparison.Ordinal)).Key;
        var markup = BcfSamples.Xml(entries[name]);
        var topic = markup.Element("Topic")!;
        topic.SetAttributeValue("TopicStatus", "Closed");
        topic.Element("Description")!.AddBeforeSelf(new XElement("AssignedTo", "architect@example.org"));
        var comment = new XElement(
            "Comment", new XAttribute("Guid", "11111111-2222-4333-8444-555555555555"), new XElement("Date", "2026-04-01T09:00:00+02:00"),
            new XElement("Author", "architect@example.org"), new XElement("Comment", "Accepted, \"will be moved\""));
        markup.Descendants("Comment").First(element => element.HasElements).AddBeforeSelf(comment);
        entries[name] = Encoding.UTF8.GetBytes(markup.ToString());

        var theirs = $"<Markup><Topic Guid=\"{Foreign}\" TopicType=\"Clash\" TopicStatus=\"In work\"><Title>A pipe</Title><CreationDate>2026-01-01T00:00:00Z</CreationDate><CreationAuthor>pipes@example.org</CreationAuthor></Topic></Markup>";
        entries[$"{Foreign}/markup.bcf"] = Encoding.UTF8.GetBytes(theirs);
        entries[$"{Foreign}/note.txt"] = "a note"u8.ToArray();
        return (entries, new Dictionary<string, string>(StringComparer.Ordinal) { [Foreign] = theirs });
    }
}
