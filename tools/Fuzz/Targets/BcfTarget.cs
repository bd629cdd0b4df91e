using System.IO.Compression;
using System.Text;
using IfcCourser.Output.Bcf;

namespace Fuzz.Targets;

/// <summary>Issues that came back: as a zip file, and as the markup in a sound zip file, for few changes of a zip leave its sums right.</summary>
internal static class BcfTarget
{
    private static readonly string _path = Path.Combine(Path.GetTempPath(), FormattableString.Invariant($"ifccourser-fuzz-{Environment.ProcessId}.bcf"));

    public static void Archive(byte[] bytes)
    {
        File.WriteAllBytes(_path, bytes);
        var read = BcfReader.Read(_path);
        if (!read.IsOk)
        {
            return;
        }

        using (var stream = File.Create(_path))
        {
            BcfWriter.Write(read.Value, stream);
        }

        var again = BcfReader.Read(_path);
        Law.Holds(again.IsOk, $"a written file can't be read: {again.Fault}");
        Law.Holds(again.Value!.Topics.Length == read.Value.Topics.Length, "a topic is lost in writing");
    }

    public static void Markup(byte[] bytes)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            var version = bytes is [(byte)'2', ..] ? "2.1" : "3.0";
            Add(zip, "bcf.version", Encoding.UTF8.GetBytes($"<Version VersionId=\"{version}\"/>"));
            Add(zip, "topic/markup.bcf", bytes.AsSpan(Math.Min(1, bytes.Length)));
        }

        Archive(stream.ToArray());
    }

    private static void Add(ZipArchive zip, string name, ReadOnlySpan<byte> content)
    {
        using var entry = zip.CreateEntry(name, CompressionLevel.NoCompression).Open();
        entry.Write(content);
    }
}
