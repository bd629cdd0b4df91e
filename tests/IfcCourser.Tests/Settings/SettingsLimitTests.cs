using IfcCourser.Catalogs;
using IfcCourser.Jobs;

namespace IfcCourser.Tests.Settings;

/// <summary>Settings files made to do harm.</summary>
public sealed class SettingsLimitTests
{
    [Theory]
    [InlineData("a = ", "[")]
    [InlineData("a = ", "{a=")]
    [InlineData("", "[[")]
    public void Nesting_without_end_is_a_fault_with_its_line_and_no_stack_overflow(string start, string nested)
    {
        var fault = CatalogReader.Read("# a comment\n" + start + string.Concat(Enumerable.Repeat(nested, 100_000)), "deep.toml").Fault!;
        Assert.Equal(2, fault.Line);
        Assert.Contains("too deep", fault.What, StringComparison.Ordinal);
    }

    /// <summary>Found by fuzzing: where a job file has no table of a name, there is no key near those in it.</summary>
    [Fact]
    public void A_catalog_given_as_job_file_is_a_fault() =>
        Assert.NotNull(JobReader.Read("name = \"x\"\n[units]\nwidths = [\"1 m\"]\n", "catalog.toml").Fault);

    /// <summary>Found by fuzzing: a file cut off behind a backslash.</summary>
    [Theory]
    [InlineData("name = \"\\")]
    [InlineData("name = \"\"\"\\")]
    [InlineData("\"\\")]
    public void A_text_that_ends_with_the_file_is_a_fault_with_its_line(string cutOff)
    {
        var fault = JobReader.Read("# a comment\n" + cutOff, "cut-off.toml").Fault!;
        Assert.InRange(fault.Line!.Value, 2, 3);
        Assert.Contains("no valid TOML", fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_of_very_many_parts_is_a_fault_and_no_stack_overflow() =>
        Assert.NotNull(JobReader.Read(string.Join('.', Enumerable.Repeat("a", 100_000)) + " = 1", "long.toml").Fault);

    [Fact]
    public void A_file_larger_than_any_settings_is_refused_unread()
    {
        var path = Path.GetTempFileName() + ".toml";
        File.WriteAllText(path, new string('#', 2_000_000));
        Assert.Contains("larger than", CatalogReader.Load(path).Fault!.What, StringComparison.Ordinal);
        File.Delete(path);
    }
}
