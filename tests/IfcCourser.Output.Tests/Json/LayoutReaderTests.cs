using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Dxf;
using IfcCourser.Output.Json;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Svg;
using IfcCourser.Output.Tables;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Json;

public sealed partial class LayoutReaderTests
{
    public static TheoryData<string> Models => [.. FixtureLayouts.Models];

    [Theory]
    [MemberData(nameof(Models))]
    public void What_was_read_is_written_with_the_same_bytes(string model) => AssertSameBytes(FixtureLayouts.Of(model));

    [Theory]
    [InlineData("junctions/tee-on-face", "octametric", "de")]
    [InlineData("junctions/corner-butted", "block-in", "us")]
    [InlineData("yarrow/yarrow", "aac-in", "us")]
    [InlineData("teasel/teasel", "aac-in", "us")]
    [InlineData("sorrel/sorrel", "aac-in", "us")]
    [InlineData("junctions/corner-obtuse", "aac-600", "none")]
    public void Sheets_and_tables_of_what_was_read_are_those_of_the_run(string model, string catalog, string rules)
    {
        var layout = FixtureLayouts.Of(model, catalog, rules);
        AssertSameBytes(layout);
        AssertSameDrawings(layout);
    }

    [Fact]
    public void One_of_every_kind_of_thing_is_read() => AssertSameBytes(SampleLayout.Full);

    /// <summary>Walls anywhere and at any angle, which no fixture has.</summary>
    [Fact]
    public void Generated_walls_are_read_back_and_drawn_the_same() => Gen
        .Select(Gen.Double[-1e7, 1e7], Gen.Double[-1e7, 1e7], Gen.Double[0, 6.28], Gen.Int[1500, 6000], Gen.Int[1000, 2600], Gen.Int[300, 900])
        .ForAll(
            wall =>
            {
                var layout = Laid(wall.Item1, wall.Item2, wall.Item3, Length.FromMm(wall.Item4), Length.FromMm(wall.Item5), Length.FromMm(wall.Item6));
                AssertSameBytes(layout);
                AssertSameDrawings(layout);
            },
            cases: 12,
            seed: "0000000000a1");

    [Theory]
    [InlineData("\"schema\": \"ifccourser.layout/1\"", "\"schema\": \"ifccourser.layout/2\"", "its schema is \"ifccourser.layout/2\", and this version reads \"ifccourser.layout/1\"")]
    [InlineData("\"schema\": \"ifccourser.layout/1\"", "\"format\": 1", "this is no layout")]
    [InlineData("\"levelLine\"", "\"levelling\"", "walls[0].levelLine is missing")]
    [InlineData("\"group\": \"G1\"", "\"group\": 1", "walls[0].group is not a text")]
    [InlineData("\"cut\":\"none\"", "\"cut\":\"sawn\"", "walls[0].courses[0].pieces[0].cut is \"sawn\"")]
    [InlineData("\"cut\":\"length+rake\"", "\"cut\":\"rake+length\"", "walls[0].courses[1].pieces[0].cut is \"rake+length\"")]
    [InlineData("\"status\": \"coursed\"", "\"status\": \"maybe\"", "walls[0].status is \"maybe\"")]
    [InlineData("\"thickness\":200.025", "\"thickness\":200.0250001", "walls[0].frame.thickness is not a length of a building in mm with at most six decimals")]
    [InlineData("\"thickness\":200.025", "\"thickness\":-1", "walls[0].frame.thickness is not more than nothing")]
    [InlineData("\"thickness\":200.025", "\"thickness\":1e300", "walls[0].frame.thickness is not a length of a building")]
    [InlineData("[0.707106781187,-0.707106781187]", "[0.7,-0.2]", "walls[0].frame.direction is not a direction of length 1")]
    [InlineData("[0.707106781187,-0.707106781187]", "[1]", "walls[0].frame.direction is not a list of 2")]
    [InlineData("\"bottom\": 12.7,", "\"bottom\": 500,", "walls[0].courses[0].top is not more than bottom")]
    [InlineData("\"from\":0,\"to\":", "\"from\":0,\"to\":-", "walls[0].courses[0].pieces[0].to is not more than from")]
    [InlineData("\"spans\": [[0,606.425]]", "\"spans\": []", "walls[0].courses[0].edges is not a list of 0")]
    [InlineData("\"severity\":\"note\"", "\"severity\":\"info\"", "is \"info\", which is none of")]
    [InlineData("\"group\": \"G1\"", "\"group\": \"\\ud800\"", "walls[0].group is not a text of whole characters")]
    [InlineData("\"group\": \"G1\"", "\"group\": \"G1\", \"group\": \"G2\"", "this is no valid JSON")]
    [InlineData("\"settings\": {", "\"settings\": 1, \"others\": {", "settings is not an object")]
    [InlineData("\"partLengths\":[],\"otherHeights\":[],\"widths\":[{", "\"partLengths\":[],\"otherHeights\":[],\"widths\":[{\"x\":1},{", "settings can't be read at $.catalog.widths[0]")]
    [InlineData("\"set\":{\"name\":\"us\",", "\"set\":{", "settings can't be read at $.set")]
    [InlineData("\"openings\":\"move\",\"minOverlap\"", "\"openings\":7,\"minOverlap\"", "settings can't be read at $.openings")]
    public void What_is_wrong_is_named_with_its_place(string replace, string with, string expected)
    {
        var text = Encoding.UTF8.GetString(Written(SampleLayout.Full));
        Assert.Contains(replace, text, StringComparison.Ordinal);
        var at = text.IndexOf(replace, StringComparison.Ordinal);
        var read = LayoutReader.Read(Encoding.UTF8.GetBytes(string.Concat(text.AsSpan(0, at), with, text.AsSpan(at + replace.Length))), "some/layout.json");
        Assert.False(read.IsOk);
        Assert.StartsWith("some/layout.json", read.Fault.ToString(), StringComparison.Ordinal);
        Assert.Contains(expected, read.Fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_json_is_refused_with_its_line()
    {
        var read = LayoutReader.Read(Encoding.UTF8.GetBytes("{\n\"schema\": \"ifccourser.layout/1\",\nwalls}"), "a.json");
        Assert.Equal(3, read.Fault!.Line);
    }

    [Fact]
    public void A_file_that_is_missing_is_named() => Assert.Contains("none.json", LayoutReader.Load(Path.Combine("no", "none.json")).Fault!.ToString(), StringComparison.Ordinal);

    /// <summary>Found by fuzzing: a lone continuation byte, in a value and in a name.</summary>
    [Theory]
    [InlineData("{\"schema\":\"~\"}")]
    [InlineData("{\"~\":1}")]
    public void Bytes_that_are_no_text_are_refused(string json) =>
        Assert.NotNull(LayoutReader.Read(System.Text.Encoding.Latin1.GetBytes(json.Replace('~', '\u0090')), "a.json").Fault);

    /// <summary>Found by fuzzing: a volume of more decimals than files have was written once with zeros at its end, then without.</summary>
    [Fact]
    public void Numbers_of_more_decimals_are_read_as_they_are_written()
    {
        var text = Encoding.UTF8.GetString(Written(SampleLayout.Full));
        var longer = text.Replace("\"netVolume\":0.2,", "\"netVolume\":0.1999999999918,", StringComparison.Ordinal);
        Assert.NotEqual(text, longer, StringComparer.Ordinal);
        Assert.Equal(text, Encoding.UTF8.GetString(Written(LayoutReader.Read(Encoding.UTF8.GetBytes(longer), "a.json").Value!)));
    }

    [Fact]
    public void A_byte_order_mark_does_no_harm() => Assert.True(LayoutReader.Read((byte[])[0xEF, 0xBB, 0xBF, .. Written(SampleLayout.Full)], "a.json").IsOk);

    /// <summary>Whatever stands in the file, a fault is a value and comes soon.</summary>
    [Fact]
    public void Damaged_files_are_read_or_refused() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 200], Gen.Int[0, 10].Select(i => ((string[])["", "[", "]", "{", "null", "0", "-1e9", "\"\"", ",", "\\u", "é"])[i]))
        .ForAll(
            damage =>
            {
                var text = Encoding.UTF8.GetString(Written(SampleLayout.Full));
                var at = damage.Item1 % text.Length;
                var bytes = Encoding.UTF8.GetBytes(string.Concat(text.AsSpan(0, at), damage.Item3, text.AsSpan(Math.Min(text.Length, at + damage.Item2))));
                var read = LayoutReader.Read(bytes, "a.json");
                Assert.True(read.IsOk || read.Fault is not null);
            },
            cases: 500,
            seed: "0000000000b2");

    /// <summary>Each value replaced by one of another kind: never an exception.</summary>
    [Fact]
    public void Any_value_of_another_kind_is_refused_or_read()
    {
        var text = Encoding.UTF8.GetString(Written(SampleLayout.Full));
        foreach (var value in Value().Matches(text).Where((_, i) => i % 20 == 0).Select(match => match.Groups["value"]))
        {
            foreach (var other in (string[])["null", "[]", "{}", "\"x\"", "-5", "1e30", "true"])
            {
                var read = LayoutReader.Read(Encoding.UTF8.GetBytes(string.Concat(text.AsSpan(0, value.Index), other, text.AsSpan(value.Index + value.Length))), "a.json");
                Assert.True(read.IsOk || read.Fault is not null);
            }
        }
    }

    [GeneratedRegex(": ?(?<value>\"[^\"]*\"|-?[0-9.]+|true|false|null|\\[\\]|\\{\\})", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Value();

    private static Layout Read(Layout layout)
    {
        var read = LayoutReader.Read(Written(layout), "layout.json");
        Assert.True(read.IsOk, read.Fault?.ToString());
        return read.Value;
    }

    private static byte[] Written(Layout layout) => Bytes(stream => LayoutJson.Write(layout, stream));

    private static byte[] Bytes(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }

    private static void AssertSameBytes(Layout layout) => Assert.Equal(Encoding.UTF8.GetString(Written(layout)), Encoding.UTF8.GetString(Written(Read(layout))));

    private static void AssertSameDrawings(Layout layout)
    {
        var read = Read(layout);
        AssertSame(Drawings(layout), Drawings(read));
        foreach (var table in (Action<Layout, Stream>[])[PointsCsv.Write, BarsCsv.Write, FindingsCsv.Write])
        {
            Assert.Equal(Bytes(stream => table(layout, stream)), Bytes(stream => table(read, stream)));
        }
    }

    private static void AssertSame(List<byte[]> expected, List<byte[]> actual)
    {
        Assert.NotEmpty(expected);
        Assert.Equal(expected.Count, actual.Count);
        Assert.All(expected.Zip(actual), pair => Assert.True(pair.First.AsSpan().SequenceEqual(pair.Second)));
    }

    private static List<byte[]> Drawings(Layout layout) =>
    [
        .. layout.Walls.Select(wall => WallSheet.Compose(layout, wall))
            .Concat(layout.SetOut.Storeys.Select(storey => SetOutSheet.Compose(layout, storey)))
            .SelectMany(sheet => (byte[][])[Bytes(stream => DxfWriter.Write([sheet], stream)), Bytes(stream => SvgWriter.Write(sheet, stream))]),
    ];

    private static Layout Laid(double x, double y, double angle, Length length, Length height, Length window)
    {
        var opening = new ElevationRect(length / 3, (length / 3) + window, height / 3, (height / 3) + (window / 2));
        var wall = new Wall
        {
            Identity = new WallIdentity("0UcKJVh1wiUc0jPM8BIIf8", 7, "Wall", "Ground floor", null),
            Frame = new WallFrame(new Vector3(x, y, x / 1000), new Vector2(Math.Cos(angle), Math.Sin(angle)), length, Length.FromInches(7.875)),
            Body = new BodyFacts(x / 7e6, y / 3e6, new Vector3(x, y, 0), new Vector3(y, x, 1)),
            Outline = [new(Length.Zero, Length.Zero), new(length, Length.Zero), new(length, height), new(Length.Zero, height)],
            Openings = [new WallOpening("4UcKJVh1wiUc0jPM8BIIf8", 9, "W", OpeningKind.Window, null, null, opening, null)],
            Start = WallEnd.Free,
            End = WallEnd.Free,
            Findings = [],
        };
        var model = new WallModel { Walls = [wall], Skipped = [], Junctions = [], Findings = [] };
        var facts = new ModelFacts("generated.ifc", new string('0', 64), "IFC4", 1, null, null, "2026-01-01");
        return LayoutBuilder.Build(model, LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move), facts);
    }
}
