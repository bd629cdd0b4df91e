using System.Xml.Linq;
using IfcCourser.Findings;

namespace IfcCourser.Output.Bcf;

/// <summary>Reads a BCF file of version 2.1 or 3.0 that others may have written; nothing in it is trusted.</summary>
public static class BcfReader
{
    private const string Markup = "markup.bcf";

    /// <summary>Entries of the root that are read or written anew.</summary>
    private static readonly ImmutableHashSet<string> _own = ImmutableHashSet.Create(StringComparer.OrdinalIgnoreCase, "bcf.version", "project.bcfp", "extensions.xml");

    public static Outcome<BcfFile> Read(string path)
    {
        var opened = BcfArchive.Read(path);
        if (!opened.IsOk)
        {
            return opened.Fault;
        }

        var entries = opened.Value.Entries;
        var version = Root(path, entries, "bcf.version");
        if (version is not { IsOk: true })
        {
            return version?.Fault ?? Messages.NoBcfVersion(path);
        }

        BcfVersion? known = version.Value.Attribute("VersionId")?.Value switch { "2.1" => BcfVersion.V21, "3.0" => BcfVersion.V30, _ => null };
        return known is { } read ? Topics(path, entries, read) : Messages.UnknownBcfVersion(path, version.Value.Attribute("VersionId")?.Value);
    }

    private static Outcome<BcfFile> Topics(string path, ImmutableSortedDictionary<string, byte[]> entries, BcfVersion version)
    {
        var topics = new List<BcfTopic>();
        var folders = entries.GroupBy(entry => entry.Key.Contains('/', StringComparison.Ordinal) ? entry.Key[..entry.Key.IndexOf('/', StringComparison.Ordinal)] : string.Empty, StringComparer.Ordinal)
            .Select(folder => (Name: folder.Key, Files: folder.ToImmutableSortedDictionary(entry => entry.Key[(folder.Key.Length == 0 ? 0 : folder.Key.Length + 1)..], entry => entry.Value, StringComparer.Ordinal)))
            .ToList();
        foreach (var (name, files) in folders.Where(folder => folder.Files.ContainsKey(Markup)))
        {
            var markup = BcfArchive.Parse(path, $"{name}/{Markup}", files[Markup]);
            if (!markup.IsOk)
            {
                return markup.Fault;
            }

            if (MarkupReader.Read(markup.Value, version) is not { } topic)
            {
                return Messages.NoTopic(path, $"{name}/{Markup}");
            }

            if (topics.Exists(other => string.Equals(other.Guid, topic.Guid, StringComparison.OrdinalIgnoreCase)))
            {
                return Messages.TopicTwice(path, topic.Guid);
            }

            topics.Add(topic with { Attachments = files.Remove(Markup), Original = (name, files[Markup]) });
        }

        var project = Root(path, entries, "project.bcfp");
        var extensions = Root(path, entries, "extensions.xml");
        if ((project?.Fault ?? extensions?.Fault) is { } fault)
        {
            return fault;
        }

        var told = project?.Value?.Element("Project");
        return new BcfFile(version, told?.Attribute("ProjectId")?.Value, told?.Element("Name")?.Value, [.. topics], Extensions(extensions?.Value), default)
        {
            Others = folders.Where(folder => !folder.Files.ContainsKey(Markup))
                .SelectMany(folder => folder.Files.Select(file => KeyValuePair.Create(folder.Name.Length == 0 ? file.Key : $"{folder.Name}/{file.Key}", file.Value)))
                .Where(entry => !_own.Contains(entry.Key))
                .ToImmutableSortedDictionary(StringComparer.Ordinal),
        };
    }

    private static BcfExtensions Extensions(XElement? root) => BcfExtensions.Names.Aggregate(
        new BcfExtensions(), (all, names) => all.With(names.List, root?.Elements(names.List).Elements(names.Entry).Select(entry => entry.Value) ?? []));

    /// <summary>The root element of an entry; null where there is no such entry.</summary>
    private static Outcome<XElement>? Root(string path, ImmutableSortedDictionary<string, byte[]> entries, string name) =>
        entries.TryGetValue(name, out var content) ? BcfArchive.Parse(path, name, content) : null;
}
