using System.IO.Compression;
using System.Xml;
using System.Xml.Linq;
using IfcCourser.Findings;

namespace IfcCourser.Output.Bcf;

/// <summary>The entries of a zip file from others, within limits: how many, how large in all once unpacked, names that stay inside, XML without a DTD.</summary>
/// <param name="Entries">By name; folders are none.</param>
internal sealed record BcfArchive(ImmutableSortedDictionary<string, byte[]> Entries)
{
    private const int MostEntries = 20_000;
    private const int MostBytes = 256 * 1024 * 1024;
    private const int MostXml = 16 * 1024 * 1024;
    private const int Deepest = 32;
    private const int ReadAtOnce = 65_536;

    public static Outcome<BcfArchive> Read(string path)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read);
            using var zip = new ZipArchive(stream, ZipArchiveMode.Read);
            return Read(path, zip);
        }
        catch (InvalidDataException e)
        {
            return Messages.NoZip(path, e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Messages.Unreadable(path, e);
        }
    }

    /// <summary>The root element of an entry.</summary>
    public static Outcome<XElement> Parse(string path, string entry, byte[] content)
    {
        try
        {
            if (content.Length > MostXml)
            {
                return Messages.XmlTooLarge(path, entry);
            }

            using (var reader = Reader(content))
            {
                while (reader.Read())
                {
                    if (reader.Depth > Deepest)
                    {
                        return Messages.XmlTooDeep(path, entry, Deepest);
                    }
                }
            }

            using var again = Reader(content);
            return XElement.Load(again);
        }
        catch (XmlException e)
        {
            return Messages.BadXml(path, entry, e);
        }
    }

    private static Outcome<BcfArchive> Read(string path, ZipArchive zip)
    {
        if (zip.Entries.Count > MostEntries)
        {
            return Messages.TooManyEntries(path, MostEntries);
        }

        var entries = ImmutableSortedDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
        var left = MostBytes;
        foreach (var entry in zip.Entries.Where(entry => !entry.FullName.EndsWith('/')))
        {
            if (!IsInside(entry.FullName))
            {
                return Messages.EntryOutside(path, entry.FullName);
            }

            if (entries.ContainsKey(entry.FullName))
            {
                return Messages.EntryTwice(path, entry.FullName);
            }

            if (Unpacked(entry, left) is not { } content)
            {
                return Messages.UnpacksTooLarge(path, MostBytes);
            }

            left -= content.Length;
            entries.Add(entry.FullName, content);
        }

        return new BcfArchive(entries.ToImmutable());
    }

    /// <summary>The bytes of an entry, whatever size it claims; null where they are more than may be.</summary>
    private static byte[]? Unpacked(ZipArchiveEntry entry, int most)
    {
        using var stream = entry.Open();
        using var bytes = new MemoryStream();
        var buffer = new byte[ReadAtOnce];
        for (var read = stream.Read(buffer); read > 0; read = stream.Read(buffer))
        {
            if (bytes.Length + read > most)
            {
                return null;
            }

            bytes.Write(buffer, 0, read);
        }

        return bytes.ToArray();
    }

    private static bool IsInside(string name) =>
        name.Length > 0 && !name.StartsWith('/') && !name.AsSpan().ContainsAny("\\:\0") && !name.Split('/').Any(part => part is "" or "." or "..");

    private static XmlReader Reader(byte[] content) => XmlReader.Create(
        new MemoryStream(content), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = MostXml, CloseInput = true });
}
