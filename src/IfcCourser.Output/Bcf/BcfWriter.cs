using System.Xml.Linq;
using IfcCourser.Output.Packing;

namespace IfcCourser.Output.Bcf;

/// <summary>Writes a BCF file of version 2.1 or 3.0 (buildingSMART BCF-XML, release_2_1 and release_3_0); the same content gives the same bytes.</summary>
public static class BcfWriter
{
    public static void Write(BcfFile file, Stream stream)
    {
        var zip = new ZipWriter(stream, file.Date);
        zip.Add("bcf.version", BcfXml.Bytes(Version(file.Version)));
        if (file.ProjectId is { Length: > 0 } id)
        {
            var project = new XElement(
                "Project", new XAttribute("ProjectId", XmlText.Of(id)), string.IsNullOrWhiteSpace(file.ProjectName) ? null : new XElement("Name", XmlText.Of(file.ProjectName)));
            zip.Add("project.bcfp", BcfXml.Bytes(file.Version == BcfVersion.V21
                ? new XElement("ProjectExtension", project, new XElement("ExtensionSchema", string.Empty))
                : new XElement("ProjectInfo", project)));
        }

        if (file.Version == BcfVersion.V30)
        {
            zip.Add("extensions.xml", BcfXml.Bytes(Extensions(file.Extensions)));
        }

        foreach (var (name, content) in file.Others)
        {
            zip.Add(name, content);
        }

        foreach (var topic in file.Topics)
        {
            var folder = topic.Original?.Folder ?? topic.Guid;
            zip.Add($"{folder}/markup.bcf", topic.Original?.Markup ?? BcfXml.Bytes(MarkupXml.Of(topic, file.Version)));
            foreach (var (name, content) in topic.Attachments)
            {
                zip.Add($"{folder}/{name}", content);
            }
        }

        zip.Close();
    }

    private static XElement Version(BcfVersion version) => version == BcfVersion.V21
        ? new XElement("Version", new XAttribute("VersionId", "2.1"), new XElement("DetailedVersion", "2.1"))
        : new XElement("Version", new XAttribute("VersionId", "3.0"));

    private static XElement Extensions(BcfExtensions extensions) => new(
        "Extensions",
        BcfExtensions.Names.Where(names => extensions.Words.GetValueOrDefault(names.List) is { Count: > 0 })
            .Select(names => new XElement(names.List, extensions.Words[names.List].Select(word => new XElement(names.Entry, XmlText.Of(word))))));
}
