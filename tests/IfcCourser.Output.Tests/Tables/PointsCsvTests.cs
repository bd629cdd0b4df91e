using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tables;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Tables;

/// <summary>points.csv read back and compared with layout.json to 1 mm.</summary>
public static class PointsCsvTests
{
    private const double Foot = 304.8;

    [Theory]
    [InlineData("yarrow/yarrow")]
    [InlineData("teasel/teasel")]
    public static void Every_core_of_the_layout_is_listed_once_at_its_point(string model)
    {
        var layout = FixtureLayouts.Of(model);
        var rows = Rows(layout);
        var cores = JsonOf(layout)["walls"]!.AsArray().SelectMany(wall => (wall!["cores"]?.AsArray() ?? [])
            .Select(core => ((string)wall["globalId"]!, (string)core!["id"]!, Point: core["point"]!.AsArray().Select(n => (double)n!).ToArray()))).ToList();
        Assert.NotEmpty(cores);
        Assert.Equal(cores.Count, rows.Count(row => row["code"].StartsWith("BAR", StringComparison.Ordinal)));
        Assert.All(cores, core =>
        {
            var row = Assert.Single(rows, row => row["wall"] == core.Item1 && row["core"] == core.Item2);
            Assert.Equal(core.Point[0], Mm(row["easting"]), 1.0);
            Assert.Equal(core.Point[1], Mm(row["northing"]), 1.0);
            Assert.Equal(core.Point[2], Mm(row["elevation"]), 1.0);
        });
    }

    /// <summary>Codes against the starters and the bars below that layout.json names.</summary>
    [Theory]
    [InlineData("yarrow/yarrow")]
    [InlineData("sorrel/sorrel")]
    public static void The_code_says_what_a_bar_begins_in(string model)
    {
        var layout = FixtureLayouts.Of(model);
        var rows = Rows(layout).Where(row => row["core"].Length > 0).ToList();
        var bars = JsonOf(layout)["walls"]!.AsArray().SelectMany(wall => (wall!["cores"]?.AsArray() ?? [])
            .Select(core => (Wall: (string)wall["globalId"]!, Core: (string)core!["id"]!, Bars: core["bars"]!.AsObject()))).ToList();
        Assert.Contains(bars, bar => bar.Bars.ContainsKey("runsOnFrom"));
        Assert.All(bars, bar => Assert.Equal(
            bar.Bars.ContainsKey("starter") ? "BAR" : bar.Bars.ContainsKey("runsOnFrom") ? "BARON" : "BARUP",
            Assert.Single(rows, row => row["wall"] == bar.Wall && row["core"] == bar.Core)["code"]));
    }

    [Fact]
    public static void Points_have_numbers_of_their_own_and_known_codes()
    {
        var rows = Rows(FixtureLayouts.Of("yarrow/yarrow"));
        Assert.Equal(rows.Count, rows.Select(row => row["point"]).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal("BAR BARON CORNER SLAB", string.Join(' ', rows.Select(row => row["code"]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)));
    }

    /// <summary>Turned by 90 degrees (x axis to the north), 0.9996, moved: a point (x, y, z) lies at (E0 - k y, N0 + k x, H0 + z).</summary>
    [Fact]
    public static void Points_lie_on_the_map_where_the_model_has_one()
    {
        var layout = FixtureLayouts.Of("yarrow/yarrow");
        var survey = new SurveyAxes(SurveyKind.Map, "EPSG:0000", 304_800_000, 609_600_000, 30_480, new Vector2(0, -1), 0.9996);
        var mapped = layout with { SetOut = layout.SetOut with { Survey = survey } };
        Assert.All(Rows(layout).Zip(Rows(mapped)), pair =>
        {
            Assert.Equal(304_800_000 - (0.9996 * Mm(pair.First["northing"])), Mm(pair.Second["easting"]), 0.1);
            Assert.Equal(609_600_000 + (0.9996 * Mm(pair.First["easting"])), Mm(pair.Second["northing"]), 0.1);
            Assert.Equal(30_480 + Mm(pair.First["elevation"]), Mm(pair.Second["elevation"]), 0.1);
        });
        Assert.Contains("EPSG:0000", Text(mapped), StringComparison.Ordinal);
    }

    [Fact]
    public static void Its_comments_say_unit_origin_and_rotation_before_the_header()
    {
        var lines = Text(FixtureLayouts.Of("yarrow/yarrow")).Split("\r\n");
        var comments = lines.TakeWhile(line => line.StartsWith("# ", StringComparison.Ordinal)).ToList();
        Assert.All(["# Unit: ft", "# Origin: ", "# Rotation: "], start => Assert.Contains(comments, line => line.StartsWith(start, StringComparison.Ordinal)));
        Assert.Equal("point,northing,easting,elevation,code,wall,core", lines[comments.Count]);
    }

    private static double Mm(string feet) => double.Parse(feet, CultureInfo.InvariantCulture) * Foot;

    private static List<Dictionary<string, string>> Rows(Layout layout)
    {
        var lines = Text(layout).Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Where(line => line[0] != '#').Select(line => line.Split(',')).ToList();
        return [.. lines.Skip(1).Select(cells => lines[0].Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal))];
    }

    private static string Text(Layout layout)
    {
        using var stream = new MemoryStream();
        PointsCsv.Write(layout, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static JsonNode JsonOf(Layout layout)
    {
        using var stream = new MemoryStream();
        LayoutJson.Write(layout, stream);
        return JsonNode.Parse(stream.ToArray())!;
    }
}
