using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests;

public sealed class OutputFolderTests
{
    [Fact]
    public void Files_appear_when_all_are_written()
    {
        using var folder = new TemporaryFolder();
        using (var output = OutputFolder.Open(folder.File("new", "out"), "input.ifc").Value!)
        {
            Assert.Null(output.Add("a.txt", stream => stream.WriteByte(1)));
            Assert.Null(output.Add("sub/b.txt", stream => stream.WriteByte(2)));
            Assert.False(File.Exists(folder.File("new", "out", "a.txt")));
            Assert.Null(output.Commit());
        }

        Assert.Equal(["new/out/a.txt", "new/out/sub/b.txt"], folder.Files());
    }

    /// <summary>What a full disk looks like to the writer.</summary>
    [Fact]
    public void A_write_that_fails_leaves_the_old_file_whole_and_nothing_new()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("a.txt"), "old");
        using (var output = OutputFolder.Open(folder.Path, "input.ifc").Value!)
        {
            var fault = output.Add("a.txt", stream =>
            {
                stream.WriteByte(1);
                throw new IOException("No space left on device");
            });

            Assert.Equal(folder.File("a.txt"), fault!.File);
            Assert.Contains("No space left on device", fault.What, StringComparison.Ordinal);
        }

        Assert.Equal(["a.txt"], folder.Files());
        Assert.Equal("old", File.ReadAllText(folder.File("a.txt")));
    }

    [Fact]
    public void A_folder_made_for_a_run_that_failed_is_removed_again()
    {
        using var folder = new TemporaryFolder();
        OutputFolder.Open(folder.File("out"), "input.ifc").Value!.Dispose();
        Assert.False(Directory.Exists(folder.File("out")));
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_a_fault()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("out"), "a file");
        Assert.Equal(folder.File("out"), OutputFolder.Open(folder.File("out"), "input.ifc").Fault!.File);
    }
}
