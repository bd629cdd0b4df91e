using IfcCourser.Jobs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Jobs;

public sealed class JobReaderTests
{
    private const string Whole = """
        project = "Plot 7"
        client = "A client"
        author = "An office"
        checked-by = "A checker"
        date = "2026-03-31"
        openings = "keep"
        max-shift = "2 in"
        walls = "all"
        width = "nearest"
        only = ["North*"]
        formats = ["json", "dxf"]
        sheet = "ARCH D"
        dxf-per-sheet = true
        fail-on = "warning"

        [[revisions]]
        mark = "A"
        date = "2026-03-12"
        what = "First issue"

        [[wall]]
        name = "North*"
        movement-joints = ["12 ft", "24 ft"]

        [[wall.embeds]]
        kind = "strap"
        size = "1 in"
        at = "12 in"
        every = "24 in"
        height = "beam"
        play = "3 in"

        [[wall.embeds]]
        kind = "sleeve"
        at = "6 ft"
        height = "1 ft"
        clear = "4 in"
        note = "by others"
        """;

    [Fact]
    public void A_job_file_says_what_the_office_and_the_command_line_would()
    {
        var job = JobReader.Read(Whole, "job.toml").Value!;

        Assert.Equal(("Plot 7", "A client", "An office", "A checker", "2026-03-31"), (job.Facts.Project, job.Facts.Client, job.Facts.Author, job.Facts.CheckedBy, job.Date));
        Assert.Equal([new Revision("A", "2026-03-12", "First issue", string.Empty)], job.Facts.Revisions);
        Assert.Equal(
            (OpeningPolicy.Keep, Length.FromInches(2), WallChoice.All, WidthMatch.Nearest), (job.Options.Openings, job.Options.MaxShift, job.Options.Walls, job.Options.Width));
        Assert.Equal(["North*"], job.Options.Only!.Value);
        Assert.Null(job.Options.Exclude);
        Assert.Equal(("ARCH D", true, "warning"), (job.Options.Sheet, job.Options.DxfPerSheet, job.Options.FailOn));
        Assert.Equal([Length.FromInches(144), Length.FromInches(288)], Assert.Single(job.Walls).MovementJoints);
        Assert.Equal(
            [
                Embed("strap", 12) with { Size = "1 in", Every = Length.FromInches(24), Height = null, Play = Length.FromInches(3) },
                Embed("sleeve", 72) with { Height = Length.FromInches(12), Clear = Length.FromInches(4), Note = "by others" },
            ],
            job.Walls[0].Embeds);
    }

    /// <summary>50 mm clear: common practice, no source.</summary>
    private static GivenEmbed Embed(string kind, double at) => new()
    {
        Kind = kind,
        Size = string.Empty,
        Note = string.Empty,
        At = Length.FromInches(at),
        Every = null,
        To = null,
        Height = null,
        Play = Length.Zero,
        Clear = Length.FromMm(50),
    };

    [Fact]
    public void Phases_name_storeys_and_walls()
    {
        var phases = JobReader.Read("[[phase]]\nname = \"1\"\nstoreys = [\"Ground*\"]\n[[phase]]\nname = \"2\"\nwalls = [\"A\", \"B\"]\n", "job.toml").Value!.Phases;
        Assert.False(phases.ByStorey);
        Assert.Equal(["1 Ground*/", "2 /A B"], phases.Listed.Select(phase => $"{phase.Name} {string.Join(' ', phase.Storeys)}/{string.Join(' ', phase.Walls)}"), StringComparer.Ordinal);
        Assert.True(JobReader.Read("phases = \"storey\"\n", "job.toml").Value!.Phases.ByStorey);
    }

    [Theory]
    [InlineData("phases = \"storey\"\n[[phase]]\nname = \"1\"\nwalls = [\"A\"]\n", "leave out one of them")]
    [InlineData("[[phase]]\nname = \"1\"\n", "is a delivery of nothing")]
    [InlineData("[[phase]]\nname = \"1\"\nwalls = [\"A\"]\n[[phase]]\nname = \"1\"\nwalls = [\"B\"]\n", "no two deliveries of one name")]
    public void Phases_that_contradict_themselves_are_refused(string text, string wrong) => Assert.Contains(wrong, JobReader.Read(text, "job.toml").Fault!.What, StringComparison.Ordinal);

    [Fact]
    public void The_second_delivery_of_a_name_is_named_by_its_line()
    {
        var fault = JobReader.Read("[[phase]]\nname = \"1\"\nwalls = [\"A\"]\n[[phase]]\nname = \"1\"\nwalls = [\"B\"]\n", "job.toml").Fault!;
        Assert.Equal(5, fault.Line);
    }

    [Fact]
    public void An_empty_file_says_nothing() => Assert.Equal((null, null, new JobOptions()), (JobReader.Read(string.Empty, "job.toml").Value!.Facts.Project, JobReader.Read(string.Empty, "job.toml").Value!.Date, JobReader.Read(string.Empty, "job.toml").Value!.Options));

    [Theory]
    [InlineData("checked-by", "chekced-by", "there is no key \"chekced-by\"", "Did you mean \"checked-by\"?", 4)]
    [InlineData("date = \"2026-03-31\"", "date = \"31.3.2026\"", "date is no date", "Correct the value.", 5)]
    [InlineData("openings = \"keep\"", "openings = \"hold\"", "openings is \"hold\", which is none of keep, move, resize", "Correct the value.", 6)]
    [InlineData("max-shift = \"2 in\"", "max-shift = \"-2 in\"", "max-shift must not be negative", "Correct the value.", 7)]
    [InlineData("mark = \"A\"", "", "the key \"revisions.mark\" is missing", "Add revisions.mark, text in quotes.", 16)]
    [InlineData("dxf-per-sheet = true", "dxf-per-sheet = \"yes\"", "dxf-per-sheet must be true or false", "Correct the value.", 13)]
    [InlineData("[\"12 ft\"", "[\"0 ft\"", "wall.movement-joints must be more than nothing, each", "Correct the value.", 23)]
    [InlineData("at = \"6 ft\"", "to = \"6 ft\"", "the key \"wall.embeds.at\" is missing", "Add wall.embeds.at, a length in quotes, such as \"24 in\".", 33)]
    [InlineData("every = \"24 in\"", "to = \"24 in\"", "wall.embeds.to stands beside every only", "Correct the value.", 29)]
    [InlineData("height = \"1 ft\"", "height = \"bean\"", "wall.embeds.height is \"bean\", which is neither beam nor a length, such as \"4 ft\"", "Correct the value.", 36)]
    public void A_wrong_key_is_named_with_file_line_and_remedy(string replace, string with, string what, string remedy, int line)
    {
        Assert.Contains(replace, Whole, StringComparison.Ordinal);
        var fault = JobReader.Read(Whole.Replace(replace, with, StringComparison.Ordinal), "job.toml").Fault!;

        Assert.StartsWith(what, fault.What, StringComparison.Ordinal);
        Assert.Equal(("job.toml", remedy, line), (fault.File, fault.Remedy, fault.Line));
    }
}
