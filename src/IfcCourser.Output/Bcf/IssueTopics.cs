using System.Security.Cryptography;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Png;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Bcf;

/// <summary>Our topics: one for each finding that is worth a designer's answer.</summary>
internal sealed class IssueTopics(Layout layout, BcfVersion version)
{
    private const int GlobalIdLength = 22;
    private const double PixelsPerMm = 6;

    private readonly string _date = StampTime.Text(StampTime.Of(layout.Model.Date));

    public ImmutableArray<BcfTopic> All() => [.. Issues.Of(layout).AsParallel().AsOrdered().Select(Topic)];

    private BcfTopic Topic(Issue issue)
    {
        var units = layout.Rules.Catalog.Units;
        var topic = new BcfTopic
        {
            Guid = issue.Guid,
            Type = issue.Code == FindingCodes.OpeningMoved || issue.Code == FindingCodes.HeadRaised ? IssueText.ConsentType : IssueText.IssueType,
            Status = IssueText.Open,
            Title = IssueText.Title(issue.Wall, issue.Opening, issue.Findings[0]),
            Priority = IssueText.Priority(issue.Findings[0].Severity),
            Labels = [issue.Opening is null ? IssueText.WallLabel : IssueText.OpeningLabel, issue.Code.Id],
            CreationDate = _date,
            CreationAuthor = IssueText.Author,
            Description = IssueText.Description(issue.Wall, issue.Opening, issue.Findings, units),
            Files = [new BcfHeaderFile(GlobalId(layout.Model.ProjectId), null, IsExternal: true, layout.Model.File, _date, null)],
            Comments = [new BcfComment(IssueGuid.Of(issue.Guid, "remedy", issue.Code.Remedy), _date, IssueText.Author, IssueText.Remedy(issue.Code), null)],
        };
        return Camera(issue) is { } camera ? Seen(topic, issue, camera) : topic;
    }

    private IssueCamera? Camera(Issue issue) => issue.Laid is { } wall ? IssueCamera.Facing(layout, wall, issue.Opening)
        : issue.Body is { } body ? IssueCamera.Facing(body.Min, body.Max)
        : null;

    /// <summary>The topic with a viewpoint; viewpoints never change (BCF 3.0, Viewpoints), so that another view has another GUID.</summary>
    private BcfTopic Seen(BcfTopic topic, Issue issue, IssueCamera camera)
    {
        string[] selected = [.. new[] { issue.Wall?.GlobalId, issue.Opening?.Opening.FillingId ?? issue.Opening?.Opening.GlobalId }.Concat(issue.Findings[0].At?.Walls ?? []).Select(GlobalId).OfType<string>().Distinct(StringComparer.Ordinal)];
        var picture = issue.Laid is { } wall ? SheetPicture.Of(IssueSheet.Compose(issue, wall, layout.Rules.Catalog.Units), PixelsPerMm, Ink) : null;
        var content = BcfXml.Bytes(ViewXml.Of(topic.Guid, camera, selected, version));
        var guid = IssueGuid.Of(topic.Guid, Convert.ToHexString(SHA256.HashData([.. content, .. picture ?? []])));
        var view = new BcfViewpoint(
            guid,
            version == BcfVersion.V21 ? "viewpoint.bcfv" : $"{guid}.bcfv",
            picture is null ? null : version == BcfVersion.V21 ? "snapshot.png" : $"{guid}.png",
            null);
        var files = topic.Attachments.Add(view.View!, BcfXml.Bytes(ViewXml.Of(guid, camera, selected, version)));
        return topic with
        {
            Viewpoints = [view],
            Comments = [.. topic.Comments.Select(comment => comment with { Viewpoint = guid })],
            Attachments = picture is null ? files : files.Add(view.Snapshot!, picture),
        };
    }

    /// <summary>As it may stand in BCF: 22 characters; of a wall that shares its GlobalId, the GlobalId (IfcGuid of markup.xsd).</summary>
    private static string? GlobalId(string? id)
    {
        var own = id?.Split('#')[0];
        return own?.Length == GlobalIdLength && own.All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '$') ? own : null;
    }

    /// <summary>What moves is red, cut blocks are light grey; the rest as in print.</summary>
    private static (byte R, byte G, byte B) Ink(PenStyle style)
    {
        var grey = (byte)Math.Round(style.Grey * 2.55);
        return style.Pen switch
        {
            Pen.DesignedJamb => (200, 0, 0),
            Pen.CutHatch => (222, 222, 222),
            Pen.WholeBlock => (120, 120, 120),
            _ => (grey, grey, grey),
        };
    }
}
