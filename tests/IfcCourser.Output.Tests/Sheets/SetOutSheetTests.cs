using System.Globalization;
using System.Text.RegularExpressions;
using IfcCourser.Layouts;
using IfcCourser.Output.Dxf;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.SetOut;
using IfcCourser.Output.Svg;
using IfcCourser.Output.Tests.Support;
using IfcCourser.SettingOut;

namespace IfcCourser.Output.Tests.Sheets;

/// <summary>Set-out sheets of houses with bars, and of a corner of two walls askew to each other.</summary>
public static partial class SetOutSheetTests
{
    public static TheoryData<string, int> Storeys => new()
    {
        { "yarrow/yarrow", 0 }, { "yarrow/yarrow", 1 }, { "teasel/teasel", 0 }, { "junctions/corner-obtuse", 0 }, { "junctions/corner-acute", 0 },
    };

    [Theory]
    [MemberData(nameof(Storeys))]
    public static void No_text_overlaps_another(string model, int storey)
    {
        var boxes = Texts(Composed(model, storey)).Select(text => (text.Text, Box: TextMetrics.BoxOf(text).Grown(-0.05))).ToArray();
        var overlaps = from i in Enumerable.Range(0, boxes.Length)
                       from j in Enumerable.Range(0, i)
                       where boxes[i].Box.Overlaps(boxes[j].Box)
                       select boxes[j].Text + " / " + boxes[i].Text;
        Assert.Empty(overlaps);
    }

    [Theory]
    [MemberData(nameof(Storeys))]
    public static void Every_text_is_legible_and_inside_the_frame(string model, int storey)
    {
        const double Least = 2.5 - 1e-9; // ISO 3098 as issue practice
        var sheet = Composed(model, storey);
        Assert.All(Texts(sheet), text => Assert.True(text.Height >= Least && sheet.Paper.Frame.Contains(TextMetrics.BoxOf(text)), text.Text));
    }

    /// <summary>The two dimensions of a bar name its number, measure from zero, and print its x and y.</summary>
    [Theory]
    [MemberData(nameof(Storeys))]
    public static void Every_bar_is_measured_twice_from_the_zero_lines(string model, int storey)
    {
        var (setOut, sheet) = (FixtureLayouts.Of(model).SetOut.Storeys[storey], Composed(model, storey));
        var lengths = new SheetLengths(sheet.Units);
        var dimensions = sheet.Views[0].Items.OfType<DimensionItem>().ToArray();
        Assert.All(setOut.Bars.Where(bar => bar.IsCastIn), bar =>
        {
            Assert.Contains(dimensions, d => Measures(d, DimensionAxis.Horizontal, bar.X.Mm, lengths.Dimension(bar.X)) && NumbersOf(d).Contains(bar.Number));
            Assert.Contains(dimensions, d => Measures(d, DimensionAxis.Vertical, bar.Y.Mm, lengths.Dimension(bar.Y)) && NumbersOf(d).Contains(bar.Number));
        });
    }

    [Theory]
    [MemberData(nameof(Storeys))]
    public static void The_printed_dimension_is_the_measured_one(string model, int storey)
    {
        var sheet = Composed(model, storey);
        var lengths = new SheetLengths(sheet.Units);
        Assert.All(sheet.Views[0].Items.OfType<DimensionItem>(), d => Assert.Equal(d.Prefix + lengths.Dimension(d.Measured), d.Text));
    }

    /// <summary>The mark lies where the model has the bar, in the storey's axes; its number stands on the plan and in both tables.</summary>
    [Theory]
    [MemberData(nameof(Storeys))]
    public static void Every_bar_has_its_mark_its_number_and_its_rows(string model, int storey)
    {
        var (setOut, sheet) = (FixtureLayouts.Of(model).SetOut.Storeys[storey], Composed(model, storey));
        var marks = sheet.Views[0].Items.OfType<BlockItem>().ToLookup(block => block.Values[0], StringComparer.Ordinal);
        var numbers = sheet.Views[0].Items.OfType<TextItem>().Where(text => text.Pen == Pen.Heading).Select(text => text.Text).ToList();
        var cells = sheet.Items.OfType<TextItem>().Select(text => text.Text).ToList();
        Assert.All(setOut.Bars.Where(bar => bar.IsCastIn), bar =>
        {
            var number = bar.Number.ToString(CultureInfo.InvariantCulture);
            Assert.Contains(marks[number], mark => Math.Abs(mark.At.X - bar.X.Mm) < 0.001 && Math.Abs(mark.At.Y - bar.Y.Mm) < 0.001);
            Assert.Contains(numbers, text => text == number);
            Assert.True(cells.Count(cell => cell == number) >= 2);
        });
    }

    /// <summary>No table or note is cut off by an ellipsis.</summary>
    [Theory]
    [MemberData(nameof(Storeys))]
    [InlineData("sorrel/sorrel", 1)]
    public static void Nothing_beside_the_plan_is_shortened(string model, int storey) =>
        Assert.DoesNotContain(Composed(model, storey).Items.OfType<TextItem>(), text => text.Text.EndsWith("...", StringComparison.Ordinal));

    /// <summary>Rules of us: No. 4 bars lap by 48 diameters, 24 in, which is the stick-up; 6 in of embedment; the hook is 3 + 1 + 12 diameters long: inside radius, bar, extension.</summary>
    [Fact]
    public static void Stick_up_embedment_and_hook_are_said()
    {
        var sheet = Composed("yarrow/yarrow", 0);
        var words = string.Join(' ', sheet.Items.OfType<TextItem>().Select(text => text.Text));
        Assert.Contains("stick-up 24 in over the slab (Up), embedment 6 in down to the underside of the hook; hook of 90 degrees, its leg 8 in over all and turned away from the slab's edge", words, StringComparison.Ordinal);
        var castIn = FixtureLayouts.Of("yarrow/yarrow").SetOut.Storeys[0].Bars.Count(bar => bar.IsCastIn);
        Assert.True(sheet.Items.OfType<TextItem>().Count(text => text.Text == "24") >= castIn);
    }

    /// <summary>A row for each mark of the storey's walls; the number in all is that of their cores' bars.</summary>
    [Theory]
    [InlineData("yarrow/yarrow", 0)]
    [InlineData("sorrel/sorrel", 1)]
    public static void The_bar_schedule_holds_what_the_storeys_walls_hold(string model, int storey)
    {
        var layout = FixtureLayouts.Of(model);
        var cells = Composed(model, storey).Items.OfType<TextItem>().Select(text => text.Text).ToList();
        var bars = layout.Walls.Where(wall => wall.Identity.Storey == layout.SetOut.Storeys[storey].Storey).SelectMany(wall => wall.Cores).Select(core => core.Bars!).ToList();
        var marks = bars.SelectMany(bar => bar.Marks.Concat(bar.Starter is { } starter ? [starter.Mark] : [])).ToList();
        Assert.NotEmpty(marks);
        Assert.All(marks.Distinct(StringComparer.Ordinal), mark => Assert.Single(cells, cell => cell == mark));
        Assert.Equal(marks.Count.ToString(CultureInfo.InvariantCulture), cells[cells.IndexOf("in all") - 1]);
    }

    [Theory]
    [MemberData(nameof(Storeys))]
    public static void Every_caution_and_every_control_point_is_on_the_sheet(string model, int storey)
    {
        var words = string.Join(' ', Texts(Composed(model, storey)).Select(text => text.Text));
        Assert.All(SheetText.CautionTexts.SelectMany(caution => caution.Split(' ')), word => Assert.Contains(word, words, StringComparison.Ordinal));
        Assert.All(FixtureLayouts.Of(model).SetOut.Storeys[storey].ControlPoints, point =>
            Assert.Contains(point.Number.ToString(CultureInfo.InvariantCulture), words, StringComparison.Ordinal));
    }

    /// <summary>At 53 degrees to each other, so one of the two is askew to the axes: its bars are also measured along its face.</summary>
    [Theory]
    [InlineData("junctions/corner-obtuse")]
    [InlineData("junctions/corner-acute")]
    public static void Bars_of_a_wall_askew_are_also_measured_along_its_face(string model)
    {
        var (setOut, sheet) = (FixtureLayouts.Of(model).SetOut.Storeys[0], Composed(model, 0));
        var lengths = new SheetLengths(sheet.Units);
        var askew = setOut.Bars.Where(bar => bar.OnFace is not null).ToList();
        Assert.NotEmpty(askew);
        Assert.Single(askew.Select(bar => bar.Wall).Distinct(StringComparer.Ordinal));
        var dimensions = sheet.Views[0].Items.OfType<DimensionItem>().ToArray();
        Assert.All(askew, bar =>
        {
            Assert.Contains(dimensions, d => d.Axis == DimensionAxis.Horizontal && d.Text.EndsWith(" " + lengths.Dimension(bar.OnFace!.Along), StringComparison.Ordinal) && NumbersOf(d).Contains(bar.Number));
            Assert.Contains(dimensions, d => d.Axis == DimensionAxis.Vertical && d.Text.EndsWith(" " + lengths.Dimension(bar.OnFace!.Across), StringComparison.Ordinal) && NumbersOf(d).Contains(bar.Number));
            var corner = setOut.ControlPoints.Single(point => point.Number == bar.OnFace!.Corner);
            var distance = Math.Sqrt(Math.Pow(bar.OnFace!.Along.Mm, 2) + Math.Pow(bar.OnFace.Across.Mm, 2));
            Assert.Equal(distance, (bar.Point - corner.Point).Length, 0.02);
        });
    }

    /// <summary>Where all bars run on from below nothing is cast in: the sheet has the control points, and both faces of every wall along an axis from the zero lines.</summary>
    [Fact]
    public static void A_storey_without_bars_to_cast_in_has_its_walls_set_out()
    {
        var house = FixtureLayouts.Of("yarrow/yarrow");
        var storey = house.SetOut.Storeys[0];
        var above = storey with { Bars = [.. storey.Bars.Select(bar => bar with { Foot = BarFoot.BarBelow })] };
        var sheet = SetOutSheet.Compose(house with { SetOut = house.SetOut with { Storeys = [above] } }, above);
        var dimensions = sheet.Views[0].Items.OfType<DimensionItem>().ToLookup(d => d.Axis, d => Math.Round(d.Measured, 1));
        var faces = house.Walls.Where(wall => wall.Identity.Storey == storey.Storey).SelectMany(wall => new[] { Units.Length.Zero, wall.Frame.Thickness }
            .Select(t => (storey.Axes.Of(wall.Frame.PointAt(Units.Length.Zero, t, Units.Length.Zero).Plan), IsAlong: Math.Abs(Geometry.Vector2.Dot(wall.Frame.Direction, storey.Axes.Along)) > 0.5)));
        Assert.All(faces, face => Assert.Contains(
            Math.Round(Math.Abs(face.IsAlong ? face.Item1.Y : face.Item1.X), 1), dimensions[face.IsAlong ? DimensionAxis.Vertical : DimensionAxis.Horizontal].SelectMany(at => new[] { at, Math.Round(at + 0.1, 1), Math.Round(at - 0.1, 1) })));
        var words = string.Join(' ', Texts(sheet).Select(text => text.Text));
        Assert.Contains("No bar is cast in here.", words, StringComparison.Ordinal);
        Assert.All(storey.ControlPoints, point => Assert.Contains(point.Number.ToString(CultureInfo.InvariantCulture), words, StringComparison.Ordinal));
        Assert.Empty(sheet.Views[0].Items.OfType<BlockItem>());
    }

    [Fact]
    public static void The_same_layout_gives_the_same_bytes_in_every_culture()
    {
        var layout = FixtureLayouts.Of("yarrow/yarrow");
        var written = Cultures.Each(() =>
        {
            using var stream = new MemoryStream();
            SvgWriter.Write(SetOutSheet.Compose(layout, layout.SetOut.Storeys[0]), stream);
            DxfWriter.Write([SetOutSheet.Compose(layout, layout.SetOut.Storeys[0])], stream);
            return stream.ToArray();
        }).ToList();
        Assert.All(written, bytes => Assert.Equal(written[0], bytes));
    }

    /// <summary>Where the block over a bar ends, measured in the sheet's axes from the plan of the piece, back towards zero and on away from it.</summary>
    [Theory]
    [InlineData("yarrow/yarrow", 0)]
    [InlineData("teasel/teasel", 0)]
    public static void Ends_of_the_block_over_a_bar_are_told_along_the_axes(string model, int storey)
    {
        var layout = FixtureLayouts.Of(model);
        var facts = new SetOutFacts(layout, layout.SetOut.Storeys[storey]);
        Assert.All(facts.CastIn, bar =>
        {
            var (way, back, on) = facts.BlockOf(bar)!.Value;
            var wall = layout.Walls.Single(wall => wall.Identity.GlobalId == bar.Block!.Wall);
            var ends = wall.Courses.Single(course => course.Number == bar.Block!.Course).Pieces
                .Select(piece => new[] { piece.From, piece.To }.Select(s => facts.At(wall, s, wall.Frame.Thickness / 2)).Select(at => way == BlockWay.X ? at.X : at.Y).Order().ToArray())
                .Single(piece => piece[0] < At(way, bar) && piece[1] > At(way, bar));
            Assert.Equal(At(way, bar) - ends[0], back.Mm, 0.01);
            Assert.Equal(ends[1] - At(way, bar), on.Mm, 0.01);
        });

        static double At(BlockWay way, BarSetOut bar) => way == BlockWay.X ? bar.X.Mm : bar.Y.Mm;
    }

    /// <summary>Of yarrow's openings W001 W2 and W004 W2 are moved along the wall; bars 9, 10 and 38, 39 stand at their jambs, read off the plan and the wall sheets.</summary>
    [Fact]
    public static void Bars_beside_moved_openings_are_held()
    {
        var layout = FixtureLayouts.Of("yarrow/yarrow", "aac-in", "us");
        Assert.Equal([9, 10, 38, 39], new SetOutFacts(layout, layout.SetOut.Storeys[0]).Held);
        var words = string.Join(' ', SetOutSheet.Compose(layout, layout.SetOut.Storeys[0]).Items.OfType<TextItem>().Select(text => text.Text));
        Assert.Contains("Held (9, 10, 38, 39):", words, StringComparison.Ordinal);
    }

    /// <summary>The only wall over the attic's slab of 40 by 28 ft is a gable of 8 in, whose diagonals tell no right angle: those of the slab are given.</summary>
    [Fact]
    public static void A_slender_wall_gives_no_diagonals_where_the_slab_does()
    {
        var attic = FixtureLayouts.Of("yarrow/yarrow", "aac-in", "us").SetOut.Storeys[1];
        Assert.Equal(2, attic.Diagonals.Length);
        Assert.All(attic.Diagonals, diagonal => Assert.Equal(Math.Sqrt((40 * 40) + (28 * 28)) * 304.8, diagonal.Length.Mm, 0.01));
        Assert.All(attic.Diagonals, diagonal => Assert.Equal(ControlPointKind.SlabCorner, attic.ControlPoints.Single(point => point.Number == diagonal.From).Kind));
    }

    private static Sheet Composed(string model, int storey)
    {
        var layout = FixtureLayouts.Of(model);
        return SetOutSheet.Compose(layout, layout.SetOut.Storeys[storey]);
    }

    private static IEnumerable<TextItem> Texts(Sheet sheet) => Lowering.Lower(sheet).OfType<TextItem>();

    private static bool Measures(DimensionItem dimension, DimensionAxis axis, double at, string printed)
    {
        var (from, to) = axis == DimensionAxis.Horizontal ? (dimension.From.X, dimension.To.X) : (dimension.From.Y, dimension.To.Y);
        return dimension.Axis == axis && from == 0 && Math.Abs(to - at) < 0.06 && dimension.Text.EndsWith(" " + printed, StringComparison.Ordinal);
    }

    /// <summary>The numbers before the distance: 3-5, 7.</summary>
    private static HashSet<int> NumbersOf(DimensionItem dimension) =>
    [
        .. Ranges().Matches(dimension.Prefix).SelectMany(match =>
        {
            var from = int.Parse(match.Groups["from"].Value, CultureInfo.InvariantCulture);
            var to = match.Groups["to"].Success ? int.Parse(match.Groups["to"].Value, CultureInfo.InvariantCulture) : from;
            return Enumerable.Range(from, to - from + 1);
        }),
    ];

    [GeneratedRegex(@"(?<from>\d+)(-(?<to>\d+))?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Ranges();
}
