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
                throw new IOException("No space left on device : '/staging/a.txt'");
            });

            Assert.Equal(folder.File("a.txt"), fault!.File);
            Assert.EndsWith("No space left on device", fault.What, StringComparison.Ordinal);
        }

        Assert.Equal(["a.txt"], folder.Files());
        Assert.Equal("old", File.ReadAllText(folder.File("a.txt")));
    }

    [Fact]
    public void Sheets_of_an_earlier_run_are_named_other_files_are_not()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.File("walls"));
        File.WriteAllText(folder.File("walls", "002-old.dxf"), "old");
        File.WriteAllText(folder.File("walls", "notes.txt"), "mine");
        using var output = OutputFolder.Open(folder.Path, "input.ifc").Value!;
        Assert.Null(output.Add("layout.json", stream => stream.WriteByte(1)));
        Assert.Null(output.Add("walls/001-new.dxf", stream => stream.WriteByte(1)));
        Assert.Null(output.Commit());

        Assert.Equal(["walls/002-old.dxf"], output.Leftovers());
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

    [Fact]
    public void A_second_run_into_the_same_folder_is_refused_until_the_first_has_ended()
    {
        using var folder = new TemporaryFolder();
        var first = OutputFolder.Open(folder.Path, "input.ifc").Value!;
        Assert.Contains("another run is writing", OutputFolder.Open(folder.Path, "input.ifc").Fault!.What, StringComparison.Ordinal);
        first.Dispose();
        using var second = OutputFolder.Open(folder.Path, "input.ifc").Value;
        Assert.NotNull(second);
    }

    [Fact]
    public void A_link_in_the_place_of_a_subfolder_is_a_fault_and_nothing_is_written_where_it_leads()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a right that accounts lack there");
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.File("elsewhere"));
        Directory.CreateDirectory(folder.File("out"));
        Directory.CreateSymbolicLink(folder.File("out", "walls"), folder.File("elsewhere"));
        using var output = OutputFolder.Open(folder.File("out"), "input.ifc").Value!;
        Assert.Contains("leads out", output.Add("walls/a.txt", stream => stream.WriteByte(1))!.What, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.File("elsewhere")));
    }

    [Fact]
    public void A_link_in_the_place_of_a_file_is_replaced_and_what_it_led_to_is_kept()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a right that accounts lack there");
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("kept.txt"), "kept");
        Directory.CreateDirectory(folder.File("out"));
        File.CreateSymbolicLink(folder.File("out", "a.txt"), folder.File("kept.txt"));
        using var output = OutputFolder.Open(folder.File("out"), "input.ifc").Value!;
        Assert.Null(output.Add("a.txt", stream => stream.WriteByte(1)));
        Assert.Null(output.Commit());
        Assert.Equal("kept", File.ReadAllText(folder.File("kept.txt")));
        Assert.Equal(1, new FileInfo(folder.File("out", "a.txt")).Length);
    }

    /// <summary>The folder is reached by a link, so that its name alone does not tell.</summary>
    [Fact]
    public void The_model_is_not_overwritten_by_way_of_a_link()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a right that accounts lack there");
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.File("models"));
        File.WriteAllText(folder.File("models", "a.ifc"), "model");
        Directory.CreateSymbolicLink(folder.File("out"), folder.File("models"));
        using var output = OutputFolder.Open(folder.File("out"), folder.File("models", "a.ifc")).Value!;
        Assert.Contains("overwrite", output.Add("a.ifc", stream => stream.WriteByte(1))!.What, StringComparison.Ordinal);
    }
}
