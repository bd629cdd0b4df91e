using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Page;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Page;

public static partial class ReportPageTests
{
    private static readonly Layout _skipping = Samples.Metric with
    {
        Skipped =
        [
            new SkippedWall(new WallIdentity("0Stud", 150, "Closet", "Ground floor", "Stud wall"), new Finding(FindingCodes.NoMasonryLayer, "No word fits."), null),
            new SkippedWall(new WallIdentity("0Other", 50, "Yard", null, null), new Finding(FindingCodes.NotSelected, "Left out by --only."), null),
        ],
        Findings = [new Finding(FindingCodes.NoLengthUnit, "The project names no length unit.")],
    };

    [Theory]
    [InlineData(PageKind.Report)]
    [InlineData(PageKind.Findings)]
    public static void Is_the_same_in_every_culture(PageKind kind) =>
        Assert.Single(Cultures.Each(() => Convert.ToHexString(SHA256.HashData(PageReading.Bytes(Samples.Metric, kind)))).Distinct(StringComparer.Ordinal));

    [Theory]
    [InlineData(PageKind.Report)]
    [InlineData(PageKind.Findings)]
    public static void Ids_are_unique_and_every_link_has_its_target(PageKind kind)
    {
        var page = PageReading.Of(_skipping, kind);
        Assert.Equal(page.Ids.Distinct(StringComparer.Ordinal), page.Ids, StringComparer.Ordinal);
        Assert.NotEmpty(page.Links);
        Assert.Empty(page.Links.Except(page.Ids, StringComparer.Ordinal));
    }

    /// <summary>Each element that is opened is closed in turn, but those that HTML lets stand alone.</summary>
    [Fact]
    public static void Elements_are_nested()
    {
        var page = PageReading.Of(_skipping);
        var markup = page.Html.Replace(page.Script, string.Empty, StringComparison.Ordinal);
        var open = new Stack<string>();
        foreach (var tag in Tags().Matches(markup).Select(match => match.Groups))
        {
            var name = tag["name"].Value;
            if (tag["end"].Length > 0)
            {
                Assert.Equal(open.Pop(), name);
            }
            else if (tag["alone"].Length == 0 && name is not ("meta" or "input" or "br"))
            {
                open.Push(name);
            }
        }

        Assert.Empty(open);
    }

    [Fact]
    public static void Nothing_is_loaded_and_only_its_own_script_may_run()
    {
        var page = PageReading.Of(Samples.Metric);
        Assert.DoesNotContain("src=", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("http", page.Html.Replace("http://www.w3.org/2000/svg", string.Empty, StringComparison.Ordinal).Replace("http-equiv", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(page.Script)));
        Assert.Contains($"default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-{hash}'", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public static void A_moved_opening_tells_how_far_and_which_way()
    {
        // The door of the front wall stands 37 mm left of where it was wanted; the wall runs along the model's x axis.
        var row = PageReading.Of(Samples.Metric, PageKind.Findings).Row("o1-D1");
        Assert.Contains("D1 Entrance door W001 Front wall, Süd / Юг", row, StringComparison.Ordinal);
        Assert.Contains("moved, awaiting consent \u2190 37 mm left, in plan \u2212X 1001 x ", row, StringComparison.Ordinal);
        Assert.Contains("stays", PageReading.Of(Samples.Metric).Row("o1-W1"), StringComparison.Ordinal);

        // 1 1/2 in to the right.
        Assert.Contains("\u2192 1 1/2\" right, in plan +X", PageReading.Of(Samples.Inch).Row("o1-D1"), StringComparison.Ordinal);
    }

    [Fact]
    public static void Every_finding_and_every_skipped_wall_is_listed()
    {
        var page = PageReading.Of(_skipping);
        Assert.Equal("warning no-length-unit the model as a whole The project names no length unit.", page.Row("f1"));
        Assert.Contains("Door D1 was moved 37 mm onto module lines.", page.Row("f2"), StringComparison.Ordinal);
        Assert.Contains("no-masonry-layer W003 Closet", page.Row("f3"), StringComparison.Ordinal);
        Assert.DoesNotContain("f4", page.Ids, StringComparer.Ordinal);
        Assert.Contains("Closet 0Stud Ground floor Stud wall no-masonry-layer No word fits.", page.Row("s3"), StringComparison.Ordinal);
        Assert.Contains("not-selected", page.Row("s1"), StringComparison.Ordinal);
        Assert.Contains("2 walls are not laid out, of 5 walls in the model.", page.Section("skipped"), StringComparison.Ordinal);
    }

    [Fact]
    public static void Quantities_add_up_by_storey_and_job()
    {
        // Three walls of 9 m2, 3.5 m2 of openings and 2.25 m3 each (SampleWall), on one storey.
        var text = PageReading.Of(Samples.Metric).Section("quantities");
        Assert.Contains("The job 3 27.00 10.50 6.750", text, StringComparison.Ordinal);
        // 9 m2 in square feet of 0.3048 m, 3.5 m2, 2.25 m3: 96.875, 37.674, 79.458.
        Assert.Contains("The job 1 96.9 37.7 79.5", PageReading.Of(Samples.Inch).Section("quantities"), StringComparison.Ordinal);
    }

    [Fact]
    public static void Says_what_the_run_was_given_and_the_cautions()
    {
        var page = PageReading.Of(Samples.Metric, PageKind.Report, new GivenOption("--walls", "all"));
        var run = page.Section("run");
        Assert.Contains("SHA-256 of the model " + new string('0', 64), run, StringComparison.Ordinal);
        Assert.Contains("Catalog aac-mm: ", run, StringComparison.Ordinal);
        Assert.Contains("Rule set eu: ", run, StringComparison.Ordinal);
        Assert.Contains("--walls all", run, StringComparison.Ordinal);
        var cautions = page.Section("cautions");
        Assert.All(
            ["licensed engineer", "building officials", "Bars drilled", "silica dust", "blown over"],
            words => Assert.Contains(words, cautions, StringComparison.Ordinal));
        Assert.All(Samples.Metric.Rules.Set.Cautions, caution => Assert.Contains(caution, cautions, StringComparison.Ordinal));
    }

    [Fact]
    public static void Five_hundred_walls_stay_a_small_file()
    {
        var wall = Samples.Metric.Walls[0];
        var many = Samples.Metric with
        {
            Walls = [.. Enumerable.Range(1, 500).Select(i => wall with { Wall = wall.Wall with { Identity = wall.Identity with { StepId = i } } })],
        };
        const int Budget = 4_000_000;
        Assert.InRange(PageReading.Bytes(many, PageKind.Report).Length, 1, Budget);
    }

    [GeneratedRegex("<(?<end>/?)(?<name>[a-z][a-z0-9]*)[^>]*?(?<alone>/?)>", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Tags();
}
