using System.Text;
using System.Text.RegularExpressions;

namespace FixtureMaker.Tests;

public class FixtureSetTests
{
    public static TheoryData<string> Paths => [.. FixtureSet.All().Select(file => file.Path)];

    public static TheoryData<string> Houses => [.. Paths.Select(row => row.Data).Where(p => p.StartsWith("ifc/", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Paths))]
    public void The_maker_reproduces_the_committed_bytes(string path) =>
        Assert.Equal(File.ReadAllBytes(Path.Combine(FixturesFolder(), path)), Made(path));

    [Fact]
    public void Every_committed_fixture_of_the_maker_is_one_it_still_makes()
    {
        var committed = new[] { "ifc", "bad" }
            .SelectMany(folder => Directory.GetFiles(Path.Combine(FixturesFolder(), folder), "*", SearchOption.AllDirectories))
            .Select(file => Path.GetRelativePath(FixturesFolder(), file).Replace('\\', '/'));
        Assert.Equal(Paths.Select(row => row.Data).Order(StringComparer.Ordinal), committed.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Houses))]
    public void Every_reference_of_a_house_is_defined_and_no_GlobalId_stands_twice(string path)
    {
        var text = Encoding.ASCII.GetString(Made(path));
        var defined = Matches(text, @"^#(\d+)=").ToHashSet(StringComparer.Ordinal);
        Assert.Empty(Matches(text, @"[(,]#(\d+)").Except(defined, StringComparer.Ordinal));

        var ids = Matches(text, @"^#\d+=IFC\w+\('([0-9A-Za-z_$]{22})',[#$]").ToList();
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [MemberData(nameof(Houses))]
    public void Every_house_says_in_header_and_project_that_it_is_invented(string path)
    {
        var text = Encoding.ASCII.GetString(Made(path));
        Assert.Matches(@"FILE_DESCRIPTION\(.*INVENTED", text);
        Assert.Matches("=IFCPROJECT\\(.*Invented for tests", text);
        Assert.Matches("=IFCSITE\\(.*Invented for tests", text);
    }

    private static byte[] Made(string path) =>
        FixtureSet.All().Single(file => string.Equals(file.Path, path, StringComparison.Ordinal)).Bytes;

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
