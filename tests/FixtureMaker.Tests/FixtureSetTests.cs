using System.Text;
using System.Text.RegularExpressions;

namespace FixtureMaker.Tests;

public class FixtureSetTests
{
    private static readonly Dictionary<string, byte[]> _made = FixtureSet.All().ToDictionary(file => file.Path, file => file.Bytes, StringComparer.Ordinal);

    public static TheoryData<string> Paths => [.. _made.Keys];

    public static TheoryData<string> Models => [.. Paths.Select(row => row.Data).Where(p => p.EndsWith(".ifc", StringComparison.Ordinal) && !p.StartsWith("bad/", StringComparison.Ordinal))];

    /// <summary>The models that nothing is wrong with.</summary>
    public static TheoryData<string> SoundModels => [.. Models.Select(row => row.Data).Where(p => !p.StartsWith("ifc/oddities/", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Paths))]
    public void The_maker_reproduces_the_committed_bytes(string path) =>
        Assert.Equal(File.ReadAllBytes(Path.Combine(FixturesFolder(), path)), _made[path]);

    [Fact]
    public void Every_committed_fixture_of_the_maker_is_one_it_still_makes()
    {
        var committed = new[] { "ifc", "bad", "survey", "tutorial" }
            .SelectMany(folder => Directory.GetFiles(Path.Combine(FixturesFolder(), folder), "*", SearchOption.AllDirectories))
            .Select(file => Path.GetRelativePath(FixturesFolder(), file).Replace('\\', '/'))
            .Where(file => !file.EndsWith("/expected.txt", StringComparison.Ordinal) && !(file.StartsWith("tutorial/", StringComparison.Ordinal) && !file.EndsWith(".ifc", StringComparison.Ordinal)));
        Assert.Equal(Paths.Select(row => row.Data).Order(StringComparer.Ordinal), committed.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(SoundModels))]
    public void Every_reference_of_a_model_is_defined_and_no_GlobalId_stands_twice(string path)
    {
        var text = Encoding.ASCII.GetString(_made[path]);
        var defined = Matches(text, @"^#(\d+)=").ToHashSet(StringComparer.Ordinal);
        Assert.Empty(Matches(text, @"[(,]#(\d+)").Except(defined, StringComparer.Ordinal));

        var ids = Matches(text, @"^#\d+=IFC\w+\('([0-9A-Za-z_$]{22})',[#$]").ToList();
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void Every_model_says_in_header_and_project_that_it_is_invented(string path)
    {
        var text = Encoding.ASCII.GetString(_made[path]);
        Assert.Matches(@"FILE_DESCRIPTION\(.*INVENTED", text);
        Assert.Matches("=IFCPROJECT\\(.*Invented for tests", text);
        Assert.Matches("=IFCSITE\\(.*Invented for tests", text);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Every_fixture_has_its_line_in_the_readme(string path) =>
        Assert.Contains($"| {path} | ", File.ReadAllText(Path.Combine(FixturesFolder(), "README.md")), StringComparison.Ordinal);

    private static IEnumerable<string> Matches(string text, string pattern) =>
        Regex.Matches(text, pattern, RegexOptions.Multiline, TimeSpan.FromSeconds(10)).Select(match => match.Groups[1].Value);

    private static string FixturesFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "IfcCourser.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("no IfcCourser.sln above the tests");
        }

        return Path.Combine(folder.FullName, "fixtures");
    }
}
