using System.IO.Compression;
using System.Text;
using IfcCourser.Findings;
using IfcCourser.Output.Bcf;

namespace IfcCourser.Output.Tests.Bcf;

/// <summary>Files that are broken or hostile: each gives one error that names the file and what is wrong.</summary>
public sealed class BcfReaderTests
{
    private const string Version = "<Version VersionId=\"3.0\"/>";
    private const string Folder = "0f0e0d0c-0b0a-4908-8706-050403020100";

    [Theory]
    [InlineData("../evil.txt", "x", "the entry \"../evil.txt\" would lie outside the file")]
    [InlineData("/etc/passwd", "x", "would lie outside the file")]
    [InlineData("a\\..\\b", "x", "would lie outside the file")]
    [InlineData("C:/x", "x", "would lie outside the file")]
    [InlineData("a//b", "x", "would lie outside the file")]
    [InlineData(Folder + "/markup.bcf", "<Markup><Topic", "markup.bcf, line 1, can't be read")]
    [InlineData(Folder + "/markup.bcf", "<!DOCTYPE m [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><Markup>&a;</Markup>", "markup.bcf can't be read: For security reasons DTD is prohibited")]
    [InlineData(Folder + "/markup.bcf", "<Markup/>", "has no topic with a GUID")]
    [InlineData(Folder + "/markup.bcf", "<Markup><Topic Guid=\"x\"/></Markup>", "has no topic with a GUID")]
    [InlineData("extensions.xml", "no xml", "extensions.xml, line 1, can't be read")]
    public void A_bad_entry_is_told(string entry, string content, string told) => Told(told, ("bcf.version", Version), (entry, content));

    [Theory]
    [InlineData("<Version VersionId=\"2.0\"/>", "this is BCF 2.0; 2.1 and 3.0 are read")]
    [InlineData("<Version/>", "this is BCF of no version")]
    public void Other_versions_are_told(string version, string told) => Told(told, ("bcf.version", version));

    [Fact]
    public void A_zip_without_a_version_is_no_bcf() => Told("there is no bcf.version in it", ("readme.txt", "hello"));

    [Fact]
    public void Elements_too_deep_are_told() =>
        Told("has elements more than 32 deep", ("bcf.version", Version), (Folder + "/markup.bcf", string.Concat(Enumerable.Repeat("<a>", 100_000)) + string.Concat(Enumerable.Repeat("</a>", 100_000))));

    [Fact]
    public void Two_topics_of_one_guid_are_told()
    {
        var markup = $"<Markup><Topic Guid=\"{Folder}\"><Title>t</Title></Topic></Markup>";
        Told("is there twice", ("bcf.version", Version), ($"{Folder}/markup.bcf", markup), ("other/markup.bcf", markup.ToUpperInvariant().Replace("MARKUP", "Markup", StringComparison.Ordinal).Replace("TOPIC", "Topic", StringComparison.Ordinal).Replace("GUID", "Guid", StringComparison.Ordinal)));
    }

    [Fact]
    public void Two_entries_of_one_name_are_told() => Told("the entry \"a.txt\" is there twice", ("bcf.version", Version), ("a.txt", "1"), ("a.txt", "2"));

    /// <summary>260 MB of zeros pack to a quarter of a megabyte.</summary>
    [Fact]
    public void A_file_that_unpacks_to_much_more_is_told()
    {
        var path = Path.GetTempFileName();
        try
        {
            using (var zip = new ZipArchive(File.Create(path), ZipArchiveMode.Create))
            {
                using var stream = zip.CreateEntry("bomb", CompressionLevel.Fastest).Open();
                var zeros = new byte[1 << 20];
                for (var i = 0; i < 260; i++)
                {
                    stream.Write(zeros);
                }
            }

            Assert.Contains("unpacks to more than 256 MB", BcfReader.Read(path).Fault!.ToString(), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void What_is_no_zip_or_is_cut_off_or_missing_is_told()
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, "no zip at all");
            Assert.Contains("this is no zip file", BcfReader.Read(path).Fault!.ToString(), StringComparison.Ordinal);
            File.WriteAllBytes(path, BcfSamples.Written(BcfSamples.Layout, BcfVersion.V30)[..4000]);
            Assert.Contains("this is no zip file", BcfReader.Read(path).Fault!.ToString(), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }

        Assert.Contains(path, BcfReader.Read(path).Fault!.ToString(), StringComparison.Ordinal);
    }

    private static void Told(string told, params (string Name, string Content)[] entries)
    {
        Outcome<BcfFile> read = BcfSamples.Read(entries.Select(entry => KeyValuePair.Create(entry.Name, Encoding.UTF8.GetBytes(entry.Content))));
        Assert.Contains(told, read.Fault?.ToString(), StringComparison.Ordinal);
    }
}
