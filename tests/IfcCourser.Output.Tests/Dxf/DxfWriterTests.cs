using System.Globalization;
using System.Text.RegularExpressions;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Dxf;

public static class DxfWriterTests
{
    private static readonly DxfReading _metric = DxfReading.Of([.. Samples.Metric.Walls.Select(wall => Samples.Sheets[wall.Identity.Name!].Sheet)]);
    private static readonly DxfReading _inch = DxfReading.Of([.. Samples.Inch.Walls.Select(wall => Samples.Sheets[wall.Identity.Name!].Sheet)]);

    public static TheoryData<string> Sets => new("mm", "in");

    [Fact]
    public static void Every_item_matches_the_reviewed_drawing_in_every_culture() =>
        Assert.All(Cultures.Each(() => DxfReading.Of(EveryItem.Sheet).Bytes), bytes => Golden.Matches("every-item.dxf", bytes));

    [Theory]
    [MemberData(nameof(Sets))]
    public static void Handles_are_unique_and_below_the_seed(string set)
    {
        var handles = Drawing(set).Records.Where(record => record.Handle is not null && record.Type != "SECTION").Select(record => record.Handle!).ToArray();
        Assert.Equal(handles.Length, handles.Distinct(StringComparer.Ordinal).Count());
        var header = Drawing(set).Records[0].Groups;
        var seed = header[header.FindIndex(group => group.Value == "$HANDSEED") + 1].Value;
        Assert.All(handles, handle => Assert.True(Hex(handle) < Hex(seed)));
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public static void Every_pointer_leads_to_a_record(string set)
    {
        int[] pointers = [330, 331, 340, 350, 390];
        var handles = Drawing(set).Records.Select(record => record.Handle).Append("0").ToHashSet(StringComparer.Ordinal);
        var pointed = Drawing(set).Records.SelectMany(record => record.Groups).Where(group => pointers.Contains(group.Code));
        Assert.All(pointed, group => Assert.Contains(group.Value, handles));
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public static void Layers_styles_and_blocks_in_use_are_in_their_tables(string set)
    {
        var drawing = Drawing(set);
        var names = drawing.Records.Where(record => record.Type is "LAYER" or "STYLE" or "DIMSTYLE" or "BLOCK_RECORD")
            .Select(record => record.Type + " " + record.First(2)).ToHashSet(StringComparer.Ordinal);
        var used = drawing.Records.SelectMany(record => Uses(record)).Distinct(StringComparer.Ordinal);
        Assert.All(used, use => Assert.Contains(use, names));
    }

    [Fact]
    public static void Metric_layers_follow_the_fixed_fields_of_ISO_13567()
    {
        // ISO 13567-2: agent 2, element 6, presentation 2 characters (from memory).
        var layers = _metric.All("LAYER").Select(layer => layer.First(2)!).Where(name => name != "0");
        Assert.All(layers, name => Assert.Matches(new Regex("^[A-Z][A-Z0-9-][A-Z0-9-]{6}[A-Z][A-Z0-9-]$", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)), name));
    }

    [Fact]
    public static void Inch_layers_follow_the_groups_of_the_US_National_CAD_Standard()
    {
        // Discipline, then major and up to two minor groups of four characters (from memory).
        var layers = _inch.All("LAYER").Select(layer => layer.First(2)!).Where(name => name != "0");
        Assert.All(layers, name => Assert.Matches(new Regex("^[A-Z][A-Z]?(-[A-Z0-9]{4}){1,3}$", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)), name));
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public static void Attributes_of_the_pieces_read_back_as_in_the_layout(string set)
    {
        var layout = set == "mm" ? Samples.Metric : Samples.Inch;
        var lengths = new SheetLengths(layout.Rules.Catalog.Units);
        var wanted = layout.Walls.SelectMany(wall => wall.Courses.SelectMany(course => course.Pieces.Select(piece =>
            $"{PieceSchedule.Of(wall).MarkOf(piece)}|{lengths.Piece(piece.Length)}|{course.Number}|{SheetText.Cut(piece)}")));
        var attributes = Drawing(set).All("ATTRIB").Where(a => a.First(2) is "MARK" or "LENGTH" or "COURSE" or "CUT").Select(a => a.First(1)!);
        Assert.Equal(wanted, attributes.Chunk(4).Select(values => string.Join('|', values)), StringComparer.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public static void Dimensions_store_the_distance_between_their_measured_points(string set) =>
        Assert.All(Drawing(set).All("DIMENSION"), dimension =>
        {
            var axis = dimension.Number(50) == 0 ? 0 : 10;
            Assert.Equal(Math.Abs(dimension.Number(14 + axis) - dimension.Number(13 + axis)), dimension.Number(42), 6);
        });

    [Fact]
    public static void Inch_dimensions_print_their_measurement_in_feet_and_sixteenths() =>
        Assert.All(_inch.All("DIMENSION"), dimension =>
            Assert.EndsWith(LengthText.Format(Length.FromInches(dimension.Number(42)), UnitSystem.Inch), dimension.First(1)!, StringComparison.Ordinal));

    [Fact]
    public static void Metric_dimensions_leave_the_number_to_the_style() =>
        Assert.All(_metric.All("DIMENSION"), dimension => Assert.True(dimension.First(1) is null || dimension.First(1)!.EndsWith("<>", StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Sets))]
    public static void Each_layout_has_its_paper_view_first_and_then_locked_views_at_their_scale(string set)
    {
        const int ZoomLocked = 16384;
        var layout = set == "mm" ? Samples.Metric : Samples.Inch;
        var views = Drawing(set).All("VIEWPORT").GroupBy(view => view.First(330), StringComparer.Ordinal).ToArray();
        Assert.Equal(layout.Walls.Length, views.Length);
        Assert.All(views, group =>
        {
            Assert.Equal("1", group.First().First(69));
            Assert.All(group.Skip(1), view =>
            {
                Assert.Equal(set == "mm" ? 20 : 16, view.Number(45) / view.Number(41), 6);
                Assert.NotEqual(0, int.Parse(view.First(90)!, CultureInfo.InvariantCulture) & ZoomLocked);
            });
        });
    }

    [Fact]
    public static void Control_codes_in_texts_are_stripped()
    {
        var text = new TextItem(Pen.Text, new Point(10, 10), "A%%%%c^J\\U+0041\n{b}", 3);
        var drawing = DxfReading.Of(EveryItem.Sheet with { Views = [], Items = [text] });
        Assert.Equal("A%cJ/U+0041{b}", Assert.Single(drawing.All("TEXT")).First(1));
    }

    [Fact]
    public static void Sheets_of_different_units_are_refused() => Assert.Throws<ArgumentException>(() =>
        DxfReading.Of(EveryItem.Sheet, EveryItem.Sheet with { Units = UnitSystem.Inch }));

    private static DxfReading Drawing(string set) => set == "mm" ? _metric : _inch;

    private static long Hex(string handle) => long.Parse(handle, NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    private static IEnumerable<string> Uses(DxfRecord record)
    {
        if (record.First(330) is null)
        {
            yield break;
        }

        if (record.Groups.Any(group => group is (100, "AcDbEntity")))
        {
            yield return "LAYER " + record.First(8);
        }

        if (record.Type is "TEXT" or "ATTRIB" or "ATTDEF")
        {
            yield return "STYLE " + record.First(7);
        }

        if (record.Type is "INSERT" or "DIMENSION")
        {
            yield return "BLOCK_RECORD " + record.First(2);
        }

        if (record.Type == "DIMENSION")
        {
            yield return "DIMSTYLE " + record.First(3);
        }
    }
}
