using System.IO.Compression;
using System.Security.Cryptography;
using IfcCourser.Findings;

namespace IfcCourser.Ifc;

/// <summary>A zipped model: a zip archive that holds exactly one .ifc file.</summary>
/// <param name="Sha256">Of the archive, lower-case hex.</param>
/// <param name="Bytes">Of the .ifc file in it.</param>
internal sealed record IfcZip(string Sha256, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>Bytes that any entry may unpack to.</summary>
    private const long SmallEnough = 64 * 1024 * 1024;

    /// <summary>Larger entries unpack to so many times their packed size at most: models of real buildings stay under 20, Deflate ends at 1032.</summary>
    private const long MostTimesPacked = 100;

    public static bool IsZip(string path) =>
        Path.GetExtension(path).Equals(".ifczip", StringComparison.OrdinalIgnoreCase)
        || Path.GetExtension(path).Equals(".zip", StringComparison.OrdinalIgnoreCase);

    public static Outcome<IfcZip> Read(string path)
    {
        try
        {
            if (InputFile.Empty(path) is { } fault)
            {
                return fault;
            }

            using var stream = File.OpenRead(path);
            var sha256 = Convert.ToHexStringLower(SHA256.HashData(stream));
            stream.Position = 0;
            using var archive = new ZipArchive(stream, ZipArchiveMode.Read);
            var models = archive.Entries
                .Where(entry => entry.Name.EndsWith(".ifc", StringComparison.OrdinalIgnoreCase))
                .ToList();
            return models.Count == 1
                ? Unzip(path, sha256, models[0])
                : new Fault(path, null, null, $"the archive holds {(models.Count == 0 ? "no" : "more than one")} .ifc file", "Zip exactly one .ifc file.");
        }
        catch (InvalidDataException)
        {
            return new Fault(path, null, null, "this is no zip archive, or a damaged one", "Zip the .ifc file again, or give the .ifc file.");
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return new Fault(path, null, null, "there is no such file", "Check the path.");
        }
        catch (UnauthorizedAccessException)
        {
            var isFolder = Directory.Exists(path);
            return new Fault(
                path, null, null, isFolder ? "this is a folder, not a file" : "the file may not be read", "Check the path and the file's permissions.");
        }
        catch (Exception e) when (e is IOException or NotSupportedException)
        {
            return new Fault(path, null, null, "the file can't be opened", "Close programs that use it, or copy it elsewhere.");
        }
    }

    private static Outcome<IfcZip> Unzip(string path, string sha256, ZipArchiveEntry entry)
    {
        var most = Math.Min(Array.MaxLength, Math.Max(SmallEnough, MostTimesPacked * entry.CompressedLength));
        if (entry.Length > most)
        {
            return TooLarge(path, most);
        }

        var bytes = new byte[entry.Length];
        using var content = entry.Open();
        var length = content.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return length < bytes.Length || content.ReadByte() >= 0
            ? new Fault(path, null, null, "the .ifc file in the archive has another size than the archive says", "Zip the .ifc file again, or give the .ifc file.")
            : new IfcZip(sha256, bytes);
    }

    private static Fault TooLarge(string path, long most) => new(
        path, null, null, $"the .ifc file in the archive unpacks to {(most == Array.MaxLength ? "more than 2 GB" : "far more than a model packed so small")}", "Unzip it and give the .ifc file.");
}
