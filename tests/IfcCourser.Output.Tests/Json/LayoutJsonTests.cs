using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using IfcCourser.Geometry;
using IfcCourser.Jobs;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Takeoff;
using IfcCourser.Units;
using IfcCourser.Walls;
using Json.Schema;

namespace IfcCourser.Output.Tests.Json;

public sealed class LayoutJsonTests
{
    private static readonly JsonSchema _schema = JsonSchema.FromText(LayoutJson.Schema());

    [Fact]
    public void What_is_written_conforms_to_the_schema() => Assert.Equal([], Breaches(Written(SampleLayout.Full)));

    [Theory]
    [InlineData("yarrow/yarrow")]
    [InlineData("junctions/corner-obtuse")]
    public void A_set_out_conforms_to_the_schema(string model)
    {
        var text = Written(FixtureLayouts.Of(model));
        Assert.Equal([], Breaches(text));
        Assert.Contains("\"castIn\":true", text, StringComparison.Ordinal);
        Assert.NotEmpty(Breaches(text.Replace("\"castIn\":true", "\"castIn\":1", StringComparison.Ordinal)));
        Assert.NotEmpty(Breaches(text.Replace("\"measures\":", "\"measured\":", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_take_off_conforms_to_the_schema()
    {
        var house = FixtureLayouts.Of("yarrow/yarrow");
        var text = Written(Orders.With(house, OffcutReuse.Storey, DeliveryPhases.Of(house, new JobPhases(ByStorey: true, []))));
        Assert.Equal([], Breaches(text));
        Assert.Contains("\"offcuts\": \"storey\"", text, StringComparison.Ordinal);
        Assert.NotEmpty(Breaches(text.Replace("\"item\":\"cut-unit\"", "\"item\":\"sawn\"", StringComparison.Ordinal)));
        Assert.NotEmpty(Breaches(text.Replace("\"phase\": ", "\"stage\": ", StringComparison.Ordinal)));
        Assert.NotEmpty(Breaches(text.Replace("\"sawnUnits\": ", "\"sawn\": ", StringComparison.Ordinal)));
    }

    /// <summary>A schema that accepts anything would make the test above worthless.</summary>
    [Theory]
    [InlineData("\"cut\":\"length+rake\"", "\"cut\":\"sawn\"")]
    [InlineData("\"status\": \"coursed\"", "\"status\": \"maybe\"")]
    [InlineData("\"spans\": ", "\"stretches\": ")]
    [InlineData("\"minOverlap\":", "\"overlap\":")]
    [InlineData("\"severity\":\"note\"", "\"severity\":\"info\"")]
    public void What_breaks_the_contract_breaks_the_schema(string replace, string with)
    {
        var text = Written(SampleLayout.Full);
        Assert.Contains(replace, text, StringComparison.Ordinal);
        Assert.NotEmpty(Breaches(text.Replace(replace, with, StringComparison.Ordinal)));
    }

    [Fact]
    public void Inches_are_written_exactly_and_coordinates_with_six_decimals()
    {
        var wall = Parsed(SampleLayout.Full)["walls"]![0]!;
        Assert.Equal("200.025", wall["frame"]!["thickness"]!.ToJsonString());
        Assert.Equal("[31000000.123457,0,0]", wall["frame"]!["origin"]!.ToJsonString());
        Assert.Equal("[0.707106781187,-0.707106781187]", wall["frame"]!["direction"]!.ToJsonString());
    }

    [Fact]
    public void A_curved_wall_says_what_it_is_unrolled_along()
    {
        var wall = SampleLayout.Full.Walls[0];
        var curved = wall with { Wall = wall.Wall with { Frame = wall.Frame with { Curve = new WallCurve(new Vector2(31_000_100.5, -2000), Length.FromMm(80000.25)) } } };
        var layout = SampleLayout.Full with { Walls = SampleLayout.Full.Walls.SetItem(0, curved) };
        Assert.Equal([], Breaches(Written(layout)));
        var curves = Parsed(layout)["walls"]!.AsArray().Select(written => written!["frame"]?["curve"]?.ToJsonString()).OfType<string>();
        Assert.Equal("""{"centre":[31000100.5,-2000],"radius":80000.25}""", Assert.Single(curves));
    }

    [Fact]
    public void Walls_coursed_and_skipped_stand_in_the_order_of_the_model_and_are_counted()
    {
        var layout = Parsed(SampleLayout.Full);
        Assert.Equal([10, 20, 30, 40], layout["walls"]!.AsArray().Select(wall => (int)wall!["stepId"]!));
        Assert.Equal(
            """{"walls":4,"coursed":2,"skipped":2,"pieces":4,"fullUnits":2,"partUnits":2,"cuts":4,"cores":2,"lintels":2}""",
            layout["totals"]!.ToJsonString());
    }

    [Fact]
    public void Ends_name_the_walls_they_meet() =>
        Assert.Equal("1UcKJVh1wiUc0jPM8BIIf8", (string?)Parsed(SampleLayout.Full)["walls"]![0]!["ends"]!["end"]!["with"]![0]);

    [Fact]
    public void Each_piece_stands_on_a_line_of_its_own_and_lines_end_alike_everywhere()
    {
        var text = Written(SampleLayout.Full);
        Assert.Equal(4, text.Split('\n').Count(line => line.Contains("\"cut\":\"", StringComparison.Ordinal)));
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [InlineData("sv-SE")]
    public void The_culture_of_the_machine_does_not_show(string culture)
    {
        var expected = Written(SampleLayout.Full);
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            Assert.Equal(expected, Written(SampleLayout.Full));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>Names of real models hold what no text should hold; the file must stay readable JSON.</summary>
    [Fact]
    public void Control_characters_and_half_surrogates_in_names_leave_valid_json()
    {
        var skipped = SampleLayout.Full.Skipped[0];
        var odd = skipped with { Identity = skipped.Identity with { Name = "a\u0001\"\\\ud800" } };
        var text = Written(SampleLayout.Full with { Skipped = [odd] });
        Assert.Equal([], Breaches(text));
        Assert.StartsWith("a\u0001\"\\", (string?)JsonNode.Parse(text)!["walls"]![1]!["name"], StringComparison.Ordinal);
    }

    private static string Written(Layout layout)
    {
        using var stream = new MemoryStream();
        LayoutJson.Write(layout, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static JsonNode Parsed(Layout layout) => JsonNode.Parse(Written(layout))!;

    private static List<string> Breaches(string text)
    {
        using var document = JsonDocument.Parse(text);
        var results = _schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return results.IsValid
            ? []
            : [.. results.Details!.Where(detail => detail.Errors is { Count: > 0 }).Select(detail => $"{detail.InstanceLocation}: {string.Join(' ', detail.Errors!.Values)}"), "not valid"];
    }
}
