using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Sheets;

public static class WallSheetTests
{
    /// <summary>Metric front wall, gable, return; inch wall.</summary>
    public static TheoryData<string> Walls => new(Samples.Sheets.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Walls))]
    public static void No_text_overlaps_another(string wall)
    {
        var boxes = Texts(wall).Select(text => (text.Text, Box: TextMetrics.BoxOf(text).Grown(-0.05))).ToArray();
        var overlaps = from i in Enumerable.Range(0, boxes.Length)
                       from j in Enumerable.Range(0, i)
                       where boxes[i].Box.Overlaps(boxes[j].Box)
                       select boxes[j].Text + " / " + boxes[i].Text;
        Assert.Empty(overlaps);
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public static void Every_text_is_legible_and_inside_the_frame(string wall)
    {
        const double Least = 2.5 - 1e-9; // ISO 3098 as issue practice; 3/32 in is less
        var frame = Samples.Sheets[wall].Sheet.Paper.Frame;
        Assert.All(Texts(wall), text => Assert.True(text.Height >= Least && frame.Contains(TextMetrics.BoxOf(text)), text.Text));
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public static void Every_sawn_piece_has_its_label_in_the_elevation(string wall)
    {
        var (layout, laid, sheet) = Samples.Sheets[wall];
        var lengths = new SheetLengths(layout.Rules.Catalog.Units);
        var schedule = PieceSchedule.Of(laid);
        var wanted = laid.Courses.SelectMany(course => course.Pieces).Where(piece => piece.Cut != Cuts.None)
            .Select(piece => SheetText.CutLabel(piece, schedule.MarkOf(piece), lengths));
        var drawn = sheet.Views[0].Items.OfType<TextItem>().Where(text => text.Pen == Pen.CutLength).Select(text => text.Text);
        Assert.Equal(wanted.Order(StringComparer.Ordinal), drawn.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public static void No_text_stands_inside_an_opening_but_tag_and_size(string wall)
    {
        var (_, laid, sheet) = Samples.Sheets[wall];
        var view = sheet.Views[0];
        foreach (var opening in laid.Openings)
        {
            var rect = opening.Placed;
            var box = new Box(rect.Left.Mm, rect.Bottom.Mm, rect.Right.Mm, rect.Top.Mm);
            var inside = view.Items.OfType<TextItem>().Where(text => ItemBox.Of(text, view.Scale.Denominator).Overlaps(box));
            Assert.Equal(2, inside.Count());
        }
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public static void Whole_blocks_carry_no_text_of_their_own(string wall)
    {
        var (_, _, sheet) = Samples.Sheets[wall];
        var whole = sheet.Views[0].Items.OfType<BlockItem>().Where(block => block.Pen == Pen.WholeBlock).ToArray();
        Assert.NotEmpty(whole);
        Assert.All(whole, block => Assert.Empty(block.Values[0]));
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public static void Each_piece_is_a_block_reference_at_its_place(string wall)
    {
        var (_, laid, sheet) = Samples.Sheets[wall];
        var pieces = laid.Courses.SelectMany(course => course.Pieces).Select(piece => new Point(piece.From.Mm, piece.Bottom.Mm));
        Assert.Equal(pieces, sheet.Views[0].Items.OfType<BlockItem>().Select(block => block.At));
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public static void The_printed_dimension_is_the_measured_one(string wall)
    {
        var (layout, _, sheet) = Samples.Sheets[wall];
        var lengths = new SheetLengths(layout.Rules.Catalog.Units);
        var dimensions = sheet.Views[0].Items.OfType<DimensionItem>().ToArray();
        Assert.NotEmpty(dimensions);
        Assert.All(dimensions, d => Assert.Equal(d.Prefix + lengths.Dimension(d.Measured), d.Text));
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public static void Every_caution_is_on_the_sheet(string wall)
    {
        var words = string.Join(' ', Texts(wall).Select(text => text.Text));
        Assert.All(SheetText.CautionTexts.SelectMany(caution => caution.Split(' ')), word => Assert.Contains(word, words, StringComparison.Ordinal));
    }

    [Fact]
    public static void Jambs_and_bars_are_dimensioned_from_the_start_of_the_run()
    {
        var (_, laid, sheet) = Samples.Sheets["Front wall, Süd / Юг"];
        var measured = sheet.Views[0].Items.OfType<DimensionItem>()
            .Where(d => d.Axis == DimensionAxis.Horizontal && d.Kind == DimensionKind.Running && d.From.X == 0)
            .Select(d => d.Measured).ToHashSet();
        var wanted = laid.Openings.SelectMany(o => new[] { o.Placed.Left.Mm, o.Placed.Right.Mm }).Concat(laid.Cores.Select(core => core.At.Mm));
        Assert.All(wanted, at => Assert.Contains(at, measured));
    }

    /// <summary>Lengths of the schedule and laps of 24 in (48 diameters of No. 4) beside each mark; reasons in full.</summary>
    [Theory]
    [InlineData("yarrow/yarrow")]
    [InlineData("sorrel/sorrel")]
    public static void Each_bar_says_why_it_stands_there_and_what_is_cut_for_it(string model)
    {
        var layout = FixtureLayouts.Of(model);
        Assert.All(layout.Walls.Where(wall => !wall.Cores.IsEmpty), wall =>
        {
            var cells = WallSheet.Compose(layout, wall).Items.OfType<TextItem>().Select(text => text.Text).ToList();
            var words = string.Join(' ', cells);
            Assert.All(wall.Cores, core =>
            {
                Assert.Contains(string.Join(", ", core.Why).Replace('-', ' '), words, StringComparison.Ordinal);
                Assert.All(core.Bars!.Marks.Concat(core.Bars.Starter is { } starter ? [starter.Mark] : []), mark =>
                {
                    var row = layout.BarSchedule.First(row => row.Mark == mark);
                    var at = cells.IndexOf(mark);
                    Assert.Equal((core.Bar, row.Shape, LengthText.Format(row.Length, UnitSystem.Inch)), (cells[at + 1], cells[at + 2], cells[at + 3]));
                    Assert.Contains(cells[at + 4], (string[])["2'-0\"", "-"], StringComparer.Ordinal);
                });
            });
        });
    }

    [Fact]
    public static void Storey_pole_counts_from_the_top_of_the_first_course()
    {
        var (_, laid, sheet) = Samples.Sheets["Front wall, Süd / Юг"];
        var heights = sheet.Views[0].Items.OfType<DimensionItem>()
            .Where(d => d.Axis == DimensionAxis.Vertical && d.From.Y == laid.LevelLine.Mm && d.Line < 0)
            .Select(d => d.Measured);
        Assert.Equal(laid.Courses.Select(course => (course.Top - laid.LevelLine).Mm), heights);
    }

    [Fact]
    public static void A_moved_opening_shows_its_designed_place_dashed_and_says_so()
    {
        var (_, laid, sheet) = Samples.Sheets["Front wall, Süd / Юг"];
        var design = laid.Openings[0].Design;
        var dashed = Assert.Single(sheet.Views[0].Items.OfType<PolylineItem>(), path => path.Pen == Pen.DesignedJamb);
        Assert.Equal(new Point(design.Left.Mm, design.Bottom.Mm), dashed.Points[0]);
        Assert.Equal(LineType.Dashed, sheet.Pens[Pen.DesignedJamb].Line);
        var words = string.Join(' ', sheet.Items.OfType<TextItem>().Select(text => text.Text));
        Assert.Contains("D1 as laid out, against its design: 37 mm to the left", words, StringComparison.Ordinal);
    }

    [Fact]
    public static void A_wall_longer_than_every_sheet_takes_a_smaller_scale_and_still_has_no_overlaps()
    {
        var layout = Samples.Long;
        var sheet = WallSheet.Compose(layout, layout.Walls[0]);
        Assert.True(sheet.Views[0].Scale.Denominator > DrawingScale.Metric[0].Denominator);
        Assert.True(sheet.Paper.Frame.Contains(sheet.Views[0].PaperBox));
    }

    [Fact]
    public static void Findings_name_openings_by_their_tags_and_only_three_of_a_kind_are_written_out()
    {
        var layout = Samples.Metric;
        var opening = layout.Walls[0].Openings[1].Opening;
        var findings = Enumerable.Range(0, 5).Select(i => new Finding(
            FindingCodes.PierShort, $"Pier {i} beside {opening.Label} is short.", new FindingPlace { Opening = opening.GlobalId }));
        var wall = layout.Walls[0] with { Findings = [.. findings] };
        var sheet = WallSheet.Compose(layout with { Walls = layout.Walls.SetItem(0, wall) }, wall);
        var words = string.Join(' ', sheet.Items.OfType<TextItem>().Select(text => text.Text));
        Assert.Contains("Pier 2 beside W1 is short.", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Pier 3", words, StringComparison.Ordinal);
        Assert.Contains("2 more of the kind", words, StringComparison.Ordinal);
    }

    [Fact]
    public static void Where_another_wall_runs_through_its_block_is_crossed_in_elevation_and_in_plan()
    {
        var layout = Samples.Metric;
        var wall = layout.Walls[2];
        var span = new Span(new Interval(Samples.Mm(241), Samples.Mm(1249)), EdgeKind.Wall, EdgeKind.Free);
        var first = wall.Courses[0] with { Spans = [span], Pieces = [] };
        var changed = wall with { Courses = wall.Courses.SetItem(0, first) };
        var sheet = WallSheet.Compose(layout with { Walls = layout.Walls.SetItem(2, changed) }, changed);
        var crossed = sheet.Views[0].Items.OfType<PolylineItem>().Where(path => path.Pen == Pen.Neighbour).ToArray();
        Assert.Equal(2, crossed.Length);
        Assert.Equal(new Box(0, 20, 240, 269), Box.Around(crossed[0].Points));
        var inPlan = Box.Around(crossed[1].Points);
        Assert.Equal((0, 240), (inPlan.Left, inPlan.Right));
        Assert.Equal(wall.Frame.Thickness.Mm, inPlan.Height, 6);
    }

    [Fact]
    public static void Head_joints_that_are_not_nominal_are_named_by_course()
    {
        var wall = Samples.Metric.Walls[2];
        var wide = wall.Courses[1] with { Pieces = Spread(wall.Courses[1].Pieces, Samples.Mm(2)) };
        var words = Words(Samples.Metric, 2, wall with { Courses = wall.Courses.SetItem(1, wide) });
        Assert.Contains("Head joints wider than 1 mm: course 2: 3 mm on average.", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Head joints", Words(Samples.Metric, 2, wall), StringComparison.Ordinal);
    }

    [Fact]
    public static void An_abutting_wall_is_dimensioned_at_both_faces_and_its_ties_are_named()
    {
        var (layout, host) = (Samples.Metric, Samples.Metric.Walls[0]);
        var frame = new WallFrame(new Vector3(4623, 3000, 0), new Vector2(0, -1), Samples.Mm(2700), Samples.Mm(115));
        var other = layout.Walls[2] with { Wall = layout.Walls[2].Wall with { Frame = frame } };
        var tee = new JunctionLayout(
            "J1",
            JunctionKind.Tee,
            [host.Identity.GlobalId, other.Identity.GlobalId],
            JunctionHow.Tied,
            host.Identity.GlobalId,
            host.Identity.GlobalId,
            [host.LevelLine + Samples.Mm(500)]);
        var sheet = WallSheet.Compose(layout with { Walls = layout.Walls.SetItem(2, other), Junctions = [tee] }, host);
        var measured = sheet.Views[0].Items.OfType<DimensionItem>().Where(d => d.Prefix == "W003  ").Select(d => d.Measured);
        Assert.Equal([4508, 4623], measured);
        Assert.Contains(
            "Tee with Return (W003) at 4508 to 4623, on the far side, ties at +500.",
            string.Join(' ', sheet.Items.OfType<TextItem>().Select(text => text.Text)),
            StringComparison.Ordinal);
    }

    [Fact]
    public static void A_formed_beam_is_crossed_both_ways_and_says_what_it_takes()
    {
        var wall = Samples.Metric.Walls[0];
        var formed = wall with { Lintels = [wall.Lintels[0], wall.Lintels[1] with { Kind = LintelKind.Formed }] };
        var sheet = WallSheet.Compose(Samples.Metric with { Walls = Samples.Metric.Walls.SetItem(0, formed) }, formed);
        var kinds = sheet.Views[0].Items.OfType<HatchItem>().Where(hatch => hatch.Pen == Pen.LintelHatch).Select(hatch => hatch.Kind);
        Assert.Equal([HatchKind.Carries, HatchKind.Formed], kinds);
        Assert.Contains("formed beam: to be designed, formed and shored", Words(Samples.Metric, 0, formed), StringComparison.Ordinal);
    }

    /// <summary>The door moved 37 mm to the left of where it was designed: its pointed arch is drawn that far left of the model's.</summary>
    [Fact]
    public static void What_is_closed_beside_an_arch_is_hatched_up_to_its_outline()
    {
        var wall = Samples.Metric.Walls[0];
        var (door, design) = (wall.Openings[0], wall.Openings[0].Design);
        var middle = (design.Left + design.Right) / 2;
        ImmutableArray<ElevationPoint> pointed =
        [
            new(design.Left, design.Bottom), new(design.Right, design.Bottom), new(design.Right, design.Top - Samples.Mm(500)),
            new(middle, design.Top), new(design.Left, design.Top - Samples.Mm(500)),
        ];
        var arched = wall with { Openings = wall.Openings.SetItem(0, door with { Opening = door.Opening with { Outline = pointed } }) };
        var sheet = WallSheet.Compose(Samples.Metric with { Walls = Samples.Metric.Walls.SetItem(0, arched) }, arched);

        var hatch = Assert.Single(sheet.Views[0].Items.OfType<HatchItem>(), hatch => hatch.Kind == HatchKind.Formed);
        Assert.Equal(2, hatch.Loops.Length);
        Assert.Equal(new Point(middle.Mm - 37, design.Top.Mm), hatch.Loops[1][3]);
        Assert.Contains(sheet.Views[0].Items.OfType<PolylineItem>(), path => path.Pen == Pen.CutBlock && path.Points.SequenceEqual(hatch.Loops[1]));
        Assert.Contains("beside an arch: cut or formed", Words(Samples.Metric, 0, arched), StringComparison.Ordinal);
    }

    /// <summary>Two faces on the layer of their own, past the wall at both ends; its place and width in the running dimensions.</summary>
    [Fact]
    public static void A_movement_joint_is_drawn_and_dimensioned()
    {
        var wall = Samples.Metric.Walls[0];
        var joint = new MovementJoint(Samples.Mm(1000), Samples.Mm(10), default, wall.Outline.Max(point => point.Z), "panel");
        var jointed = wall with { MovementJoints = [joint] };
        var sheet = WallSheet.Compose(Samples.Metric with { Walls = Samples.Metric.Walls.SetItem(0, jointed) }, jointed);

        var faces = sheet.Views[0].Items.OfType<LineItem>().Where(line => line.Pen == Pen.MovementJoint && line.From.Y < 0 && line.To.Y > joint.Top.Mm).ToList();
        Assert.Equal([995d, 1005d], faces.Select(line => line.From.X));
        Assert.All(faces, line => Assert.Equal(line.From.X, line.To.X));
        Assert.Contains(sheet.Views[0].Items.OfType<DimensionItem>(), dimension => string.Equals(dimension.Text, "MJ, 10 mm wide  1000", StringComparison.Ordinal));
        Assert.Contains("movement joint: keep it open", Words(Samples.Metric, 0, jointed), StringComparison.Ordinal);
    }

    /// <summary>A block that is cut in height over a lintel shares its head joints with the whole blocks beside it: they are nominal.</summary>
    [Fact]
    public static void Joints_of_lower_pieces_in_a_course_are_not_taken_for_wide_ones()
    {
        var wall = Samples.Metric.Walls[2];
        var pieces = wall.Courses[1].Pieces;
        var low = pieces[1] with { Bottom = pieces[1].Bottom + Samples.Mm(120) };
        var course = wall.Courses[1] with { Pieces = [pieces[0], low, .. pieces.Skip(2)] };
        Assert.DoesNotContain("Head joints", Words(Samples.Metric, 2, wall with { Courses = wall.Courses.SetItem(1, course) }), StringComparison.Ordinal);
    }

    private static ImmutableArray<Piece> Spread(ImmutableArray<Piece> pieces, Length by) =>
        [.. pieces.Select((piece, i) => piece with { From = piece.From + (by * i), To = i == pieces.Length - 1 ? piece.To : piece.To + (by * i) })];

    private static string Words(Layout layout, int index, WallLayout wall)
    {
        var sheet = WallSheet.Compose(layout with { Walls = layout.Walls.SetItem(index, wall) }, wall);
        return string.Join(' ', sheet.Items.OfType<TextItem>().Select(text => text.Text));
    }

    private static TextItem[] Texts(string wall) => [.. Lowering.Lower(Samples.Sheets[wall].Sheet).OfType<TextItem>()];
}
