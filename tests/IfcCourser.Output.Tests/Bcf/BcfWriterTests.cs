using System.Buffers.Binary;
using System.Xml.Linq;
using IfcCourser.Findings;
using IfcCourser.Output.Bcf;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Bcf;

/// <summary>What is written, held to the schemas of BCF 2.1 and 3.0.</summary>
public sealed class BcfWriterTests
{
    [Theory]
    [InlineData(BcfVersion.V21)]
    [InlineData(BcfVersion.V30)]
    public void Every_entry_follows_its_schema(BcfVersion version)
    {
        foreach (var bcf in new[] { BcfSamples.Written(BcfSamples.Layout, version), BcfSamples.Written(FixtureLayouts.Of("yarrow/yarrow"), version) })
        {
            var entries = BcfSamples.Entries(bcf);
            Assert.Equal(version == BcfVersion.V21 ? "2.1" : "3.0", BcfSamples.Xml(entries["bcf.version"]).Attribute("VersionId")!.Value);
            Assert.Equal(version == BcfVersion.V30, entries.ContainsKey("extensions.xml"));
            Assert.Contains("project.bcfp", entries.Keys, StringComparer.Ordinal);
            var breaches = entries.Where(entry => !entry.Key.EndsWith(".png", StringComparison.Ordinal))
                .SelectMany(entry => BcfSchema.Breaches(BcfSamples.Xml(entry.Value), version).Select(breach => $"{entry.Key}: {breach}"));
            Assert.Empty(breaches);
        }
    }

    /// <summary>The rules themselves catch what they should.</summary>
    [Theory]
    [InlineData("<Markup><Topic Guid=\"ABCDEF01-0000-8000-8000-000000000000\" TopicType=\"a\" TopicStatus=\"b\"><Title>t</Title><CreationDate>2026-01-01T00:00:00Z</CreationDate><CreationAuthor>a</CreationAuthor></Topic></Markup>", "is no lowerGuid")]
    [InlineData("<Markup><Topic Guid=\"abcdef01-0000-8000-8000-000000000000\" TopicType=\"a\"><Title> </Title><CreationDate>1.1.2026</CreationDate></Topic></Markup>", "Topic/@TopicStatus is missing")]
    [InlineData("<Markup><Topic Guid=\"abcdef01-0000-8000-8000-000000000000\" TopicType=\"a\" TopicStatus=\"b\"><Title>t</Title><CreationAuthor>a</CreationAuthor><CreationDate>2026-01-01T00:00:00Z</CreationDate></Topic></Markup>", "CreationDate is missing")]
    public void The_rules_find_what_is_wrong(string xml, string told) =>
        Assert.Contains(BcfSchema.Breaches(XElement.Parse(xml), BcfVersion.V30), breach => breach.Contains(told, StringComparison.Ordinal));

    /// <summary>Names hold colons where programs call an element by family, type and number.</summary>
    [Theory]
    [InlineData("Flush:0864 x 2032:150478", "Flush:0864 x 2032:150478 is off the module: widened by 12 mm it stands on it.", "Flush:0864 x 2032:150478 is off the module")]
    [InlineData("Door: north", "Door: north is off the module; not done.", "Door: north is off the module")]
    [InlineData("Door: north", "The head of Door: north: raised.", "The head of Door: north")]
    [InlineData("D1", "A pier beside Inner:100:7 is short; lengthen it.", "D1: A pier beside Inner:100:7 is short")]
    [InlineData("D1", "D1 is wide.", "D1 is wide")]
    public void A_title_is_the_first_clause_whatever_stands_in_names(string name, string message, string title) =>
        Assert.Equal(title, IssueText.Title(new WallIdentity("id", 1, name, null, null), null, new Finding(FindingCodes.OpeningOffModule, message)));

    /// <summary>
    /// Issues of the sample: the opening's move, the pier, the wall that is not laid out; short laps are the mason's. Each names model and project, its views select wall and
    /// window, its files are there, its words stand in extensions.xml (3.0, documentation: predefined lists).
    /// </summary>
    [Theory]
    [InlineData(BcfVersion.V21)]
    [InlineData(BcfVersion.V30)]
    public void A_topic_for_each_issue_with_model_view_and_picture(BcfVersion version)
    {
        var entries = BcfSamples.Entries(BcfSamples.Written(BcfSamples.Layout, version));
        var read = BcfSamples.Read(entries).Value!;

        Assert.Equal(["Front: A pier is short", "Window <1> & \u0001 moved +10 mm".Replace("\u0001", string.Empty, StringComparison.Ordinal), "wall #500: no unit is 183 mm wide"], read.Topics.Select(topic => topic.Title).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        foreach (var topic in read.Topics)
        {
            var file = Assert.Single(topic.Files);
            Assert.Equal(("3Lll7opEVXd4croeixKhM2", "haus.ifc", "2026-03-01T08:00:00Z", true), (file.IfcProject, file.Name, file.Date, file.IsExternal));
            Assert.All(topic.Viewpoints, view => Assert.Contains(view.View!, topic.Attachments.Keys, StringComparer.Ordinal));
            Assert.All(topic.Viewpoints.Where(view => view.Snapshot is not null), view => Assert.Contains(view.Snapshot!, topic.Attachments.Keys, StringComparer.Ordinal));
            Assert.Equal(FindingCodes.All.Single(code => topic.Labels.Contains(code.Id, StringComparer.Ordinal)).Remedy, Assert.Single(topic.Comments).Text);
            Assert.Equal(topic.Guid.ToLowerInvariant(), topic.Guid);
        }

        var moved = read.Topics.Single(topic => topic.Title.Contains("moved", StringComparison.Ordinal));
        var view = BcfSamples.Xml(moved.Attachments[moved.Viewpoints[0].View!]);
        Assert.Equal("0GwboGUNKdQaolI6KUnGIQ", Assert.Single(view.Descendants("Component")).Attribute("IfcGuid")!.Value);
        Assert.Equal("true", view.Descendants("ViewSetupHints").Single().Attribute("OpeningsVisible")!.Value);
        if (version == BcfVersion.V30)
        {
            var words = BcfSamples.Xml(entries["extensions.xml"]).Elements().Elements().Select(word => word.Value).ToHashSet(StringComparer.Ordinal);
            Assert.All(read.Topics, topic => Assert.Superset(new HashSet<string>([topic.Type!, topic.Status!, topic.Priority!, topic.CreationAuthor, .. topic.Labels], StringComparer.Ordinal), words));
        }
        else
        {
            Assert.Equal(("viewpoint.bcfv", "snapshot.png"), (moved.Viewpoints[0].View, moved.Viewpoints[0].Snapshot));
        }
    }

    /// <summary>A topic keeps its GUID while place, message and other findings change; another opening or code has another.</summary>
    [Fact]
    public void Topics_keep_their_guids_from_issue_to_issue_of_the_model()
    {
        var layout = BcfSamples.Layout;
        var wall = layout.Walls[0];
        var later = layout with
        {
            Model = layout.Model with { Date = "2026-05-01", Sha256 = new string('1', 64) },
            Walls = [wall with { Findings = [.. wall.Findings.Skip(1), wall.Findings[0] with { Message = "other words", At = wall.Findings[0].At! with { S = Length.FromMm(1234) } }] }],
        };
        var (first, second) = (BcfReplies.Join(layout, BcfVersion.V30, null).File.Topics, BcfReplies.Join(later, BcfVersion.V30, null).File.Topics);
        Assert.Equal(3, first.Select(topic => topic.Guid).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(first.Select(topic => topic.Guid).Order(StringComparer.Ordinal), second.Select(topic => topic.Guid).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    /// <summary>PNG, ISO/IEC 15948, 11.2.2: width and height follow the first chunk's name; BCF 3.0, topic folder: at most 1500 pixels.</summary>
    [Fact]
    public void Pictures_are_png_and_not_too_large()
    {
        var pictures = BcfSamples.Entries(BcfSamples.Written(BcfSamples.Layout, BcfVersion.V30)).Where(entry => entry.Key.EndsWith(".png", StringComparison.Ordinal)).Select(entry => entry.Value).ToList();
        Assert.Equal(2, pictures.Count);
        Assert.All(pictures, picture =>
        {
            Assert.Equal("89-50-4E-47-0D-0A-1A-0A", BitConverter.ToString(picture, 0, 8));
            Assert.InRange(BinaryPrimitives.ReadInt32BigEndian(picture.AsSpan(16)), 600, 1500);
            Assert.InRange(BinaryPrimitives.ReadInt32BigEndian(picture.AsSpan(20)), 400, 1500);
        });
    }

    [Fact]
    public void The_same_layout_gives_the_same_bytes_under_every_culture()
    {
        var files = Cultures.Each(() => BcfSamples.Written(BcfSamples.Layout, BcfVersion.V30));
        Assert.All(files, file => Assert.Equal(files[0], file));
    }
}
