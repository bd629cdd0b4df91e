using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using IfcCourser.Ifc;

namespace IfcCourser.Tests.Ifc;

/// <summary>Zip archives made to do harm.</summary>
public sealed class IfcZipTests
{
    private const int Mega = 1024 * 1024;

    /// <summary>Deflate packs noughts 1000 to 1; 100 MB lie in 100 KB.</summary>
    [Fact]
    public void An_archive_that_unpacks_to_far_more_than_it_holds_is_refused_before_it_is_unpacked()
    {
        using var archive = new TemporaryArchive(("bomb.ifc", new byte[100 * Mega]));
        Assert.Contains("far more", IfcModel.Open(archive.Path).Fault!.What, StringComparison.Ordinal);
    }

    /// <summary>The size in the central directory (PKWARE APPNOTE 4.3.12, bytes 24 to 27 of the entry) says less, or more, than the data hold.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(60 * Mega)]
    public void An_archive_that_lies_about_a_size_is_refused(int claimed)
    {
        using var archive = new TemporaryArchive(("house.ifc", Encoding.ASCII.GetBytes(new string('x', 1000))));
        var bytes = File.ReadAllBytes(archive.Path);
        var entry = bytes.AsSpan().LastIndexOf("PK\u0001\u0002"u8);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(entry + 24), claimed);
        File.WriteAllBytes(archive.Path, bytes);
        Assert.NotNull(IfcModel.Open(archive.Path).Fault);
    }

    /// <summary>Names are read only to find the model: nothing is unpacked to a place of that name.</summary>
    [Theory]
    [InlineData("../../outside.ifc")]
    [InlineData("/outside.ifc")]
    [InlineData("C:\\outside.ifc")]
    public void A_name_that_leads_out_of_the_archive_writes_nothing(string name)
    {
        using var archive = new TemporaryArchive((name, Encoding.ASCII.GetBytes(IfcSource.Text(IfcSource.Project))));
        using var model = IfcModel.Open(archive.Path).Value!;
        Assert.Equal("archive.ifczip", model.FileName);
        Assert.Equal("archive.ifczip", Path.GetFileName(Assert.Single(Directory.EnumerateFileSystemEntries(archive.Folder))));
    }

    private sealed class TemporaryArchive : IDisposable
    {
        public TemporaryArchive(params (string Name, byte[] Content)[] entries)
        {
            using var archive = ZipFile.Open(Path, ZipArchiveMode.Create);
            foreach (var (name, content) in entries)
            {
                using var stream = archive.CreateEntry(name).Open();
                stream.Write(content);
            }
        }

        public string Folder { get; } = Directory.CreateTempSubdirectory().FullName;

        public string Path => System.IO.Path.Combine(Folder, "archive.ifczip");

        public void Dispose() => Directory.Delete(Folder, recursive: true);
    }
}
