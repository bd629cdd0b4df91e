using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>A house issued again after one block of one wall became another: by hand, that block's place is the only changed area.</summary>
public static class ReissueTests
{
    private const int Changed = 2;
    private static readonly Layout _older = FixtureLayouts.Of("sorrel/sorrel", "aac-mm", "eu");
    private static readonly Piece _piece = _older.Walls[Changed].Courses[3].Pieces[2];
    private static readonly Layout _newer = With(_older, _piece with { Product = "another block" });
    private static readonly SetSheet[] _sheets = [.. DrawingSet.Of(Reissue.Of(_older, _newer), PaperSize.Iso)];
    private static readonly string _number = WallNumbers.Sheet(_older, _older.Walls[Changed]);

    [Fact]
    public static void Only_the_changed_wall_bears_a_cloud_around_what_changed()
    {
        var clouded = from sheet in _sheets
                      from shown in sheet.Compose().Views
                      let arcs = shown.Items.Where(item => item.Pen == Pen.Revised).ToArray()
                      where arcs.Length > 0
                      select (sheet.Number, shown, arcs);
        var (number, view, cloud) = Assert.Single(clouded);
        Assert.Contains(_number, number, StringComparison.Ordinal);
        var scale = view.Scale.Denominator;
        var tips = Box.Around(cloud.OfType<ArcItem>().SelectMany(arc => new[] { arc.PointAt(arc.StartDegrees), arc.PointAt(arc.EndDegrees) }));
        var wanted = new Box(_piece.From.Mm, _piece.Bottom.Mm, _piece.To.Mm, _piece.Top.Mm).Grown(scale);
        Assert.Equal((wanted.Left, wanted.Bottom, wanted.Right, wanted.Top), (Math.Round(tips.Left, 6), Math.Round(tips.Bottom, 6), Math.Round(tips.Right, 6), Math.Round(tips.Top, 6)));
    }

    /// <summary>A block of the first course: its place from above is clouded on the plan of that course, and on no other plan; of the fourth, on none.</summary>
    [Fact]
    public static void A_change_in_a_first_course_bears_a_cloud_on_its_plan()
    {
        var wall = _older.Walls[Changed];
        var piece = wall.Courses[0].Pieces[1];
        var sheets = DrawingSet.Of(Reissue.Of(_older, With(_older, piece with { Product = "another block" })), PaperSize.Iso);
        var plans = sheets.Where(sheet => sheet.Number[0] is 'P').Select(sheet => (sheet.Title, View: Assert.Single(sheet.Compose().Views))).ToArray();
        var (title, view) = Assert.Single(plans, plan => plan.View.Items.Any(item => item.Pen == Pen.Revised));
        Assert.Equal($"{wall.Identity.Storey}, first course", title);
        var tips = Box.Around(view.Items.OfType<ArcItem>().Where(arc => arc.Pen == Pen.Revised).SelectMany(arc => new[] { arc.PointAt(arc.StartDegrees), arc.PointAt(arc.EndDegrees) }));
        Assert.Equal([piece.Length.Mm, wall.Frame.Thickness.Mm], new[] { tips.Width, tips.Height }.Select(size => Math.Round(size - (2 * view.Scale.Denominator), 6)).OrderDescending());
        var words = sheets.Where(sheet => sheet.Title == title).SelectMany(sheet => Lowering.Lower(sheet.Compose())).OfType<TextItem>().Select(text => text.Text);
        Assert.Contains($"changed here since the last issue: {_number}", string.Join(' ', words), StringComparison.Ordinal);
    }

    /// <summary>A wall that stands 100 mm further: the whole of it is clouded on both plans of its storey and on its storey's set-out, though its elevation is as it was.</summary>
    [Fact]
    public static void A_wall_that_stands_elsewhere_is_clouded_on_plans()
    {
        var house = FixtureLayouts.Of("yarrow/yarrow");
        var wall = house.Walls.First(one => one.Identity.Storey == house.SetOut.Storeys.First(storey => storey.Bars.Any(bar => bar.IsCastIn)).Storey && one.Wall.Start.Slant == default && one.Wall.End.Slant == default);
        var origin = wall.Frame.Origin;
        var moved = wall with { Wall = wall.Wall with { Frame = wall.Frame with { Origin = new Geometry.Vector3(origin.X + 100, origin.Y, origin.Z) } } };
        var sheets = DrawingSet.Of(Reissue.Of(house, house with { Walls = house.Walls.Replace(wall, moved) }), PaperSize.Arch);
        var clouded = sheets.Where(sheet => sheet.Number[0] is 'P' or 'S' && sheet.Compose().Views.Any(view => view.Items.Any(item => item.Pen == Pen.Revised)));
        Assert.Equal("PPS", string.Concat(clouded.Select(sheet => sheet.Number[0]).Order()));
    }

    /// <summary>A wall that is gone: dashed and struck where it stood on both plans of its storey, clouded, named in their notes; on no other storey's.</summary>
    [Fact]
    public static void A_wall_that_is_gone_is_drawn_where_it_stood()
    {
        var wall = _older.Walls[Changed];
        var sheets = DrawingSet.Of(Reissue.Of(_older, _older with { Walls = _older.Walls.Remove(wall) }), PaperSize.Iso)
            .Where(sheet => sheet.Number[0] == 'P').Select(sheet => (sheet.Section, Sheet: sheet.Compose())).ToArray();
        Assert.All(sheets, plan =>
        {
            var (items, scale) = (plan.Sheet.Views[0].Items, plan.Sheet.Views[0].Scale.Denominator);
            var gone = items.Where(item => item.Pen == Pen.Gone).ToArray();
            Assert.Equal(plan.Section == wall.Identity.Storey ? 3 : 0, gone.Length);
            if (gone.Length == 0)
            {
                return;
            }

            var stood = Assert.Single(gone.OfType<PolylineItem>());
            Assert.Equal(wall.Frame.Thickness.Mm, Math.Min(Box.Around(stood.Points).Width, Box.Around(stood.Points).Height), 6);
            Assert.Equal(wall.Frame.Length.Mm, Math.Max(Box.Around(stood.Points).Width, Box.Around(stood.Points).Height), 6);
            Assert.All(gone.OfType<LineItem>(), strike => Assert.True(Box.Around(stood.Points).Grown(0.001).Contains(Box.Around([strike.From, strike.To]))));
            var cloud = Box.Around(items.OfType<ArcItem>().Where(arc => arc.Pen == Pen.Revised).SelectMany(arc => new[] { arc.PointAt(arc.StartDegrees), arc.PointAt(arc.EndDegrees) }));
            Assert.True(cloud.Contains(Box.Around(stood.Points).Grown(0.99 * scale)));
            var words = string.Join(' ', plan.Sheet.Items.OfType<TextItem>().Select(text => text.Text));
            Assert.Contains("Rev. A: laid out no more since the last issue", words, StringComparison.Ordinal);
            Assert.Contains($"gone: {wall.Identity.Name}", items.OfType<TextItem>().Select(text => text.Text), StringComparer.Ordinal);
        });
    }

    [Fact]
    public static void The_issue_has_a_row_and_a_letter()
    {
        var row = Assert.Single(Reissue.Of(_older, _newer).Layout.Job.Revisions);
        Assert.Equal(("A", "Walls changed 1, added 0, removed 0"), (row.Mark, row.What));
        Assert.All(_sheets, sheet => Assert.Equal("A", sheet.Compose().Title.Revision));
        var words = string.Join(' ', _sheets.SelectMany(sheet => Lowering.Lower(sheet.Compose())).OfType<TextItem>().Select(text => text.Text));
        Assert.Contains("Rev. A: pieces: courses 4: ", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("C", "B")]
    [InlineData("J", "H")]
    [InlineData("3", "2")]
    [InlineData("P1A", "P1")]
    [InlineData("ZA", "Z")]
    public static void Letters_go_on_from_the_last_issue(string wanted, string last)
    {
        var issued = _older with { Job = _older.Job with { Revisions = [new Revision(last, "2026-03-12", "Issue", "")] } };
        Assert.Equal(wanted, Reissue.Of(issued, _newer with { Job = issued.Job }).Layout.Job.Revisions[^1].Mark);
    }

    /// <summary>The office's own row counts where its job file has one more than the last issue.</summary>
    [Fact]
    public static void A_row_of_the_job_file_stands()
    {
        var job = _newer.Job with { Revisions = [new Revision("P2", "2026-04-01", "Block changed", "NE")] };
        Assert.Equal(job.Revisions, Reissue.Of(_older, _newer with { Job = job }).Layout.Job.Revisions);
    }

    [Fact]
    public static void Where_nothing_changed_the_older_set_stands()
    {
        Assert.Empty(SupersededSheets.Of(_older, _older, PaperSize.Iso));
        Assert.Equal(_older.Job.Revisions, Reissue.Of(_older, _older).Layout.Job.Revisions);
    }

    /// <summary>Product names stand in tables of the wall's sheet, in schedules and in no plan: those and no other sheets are withdrawn.</summary>
    [Fact]
    public static void Sheets_that_are_drawn_otherwise_are_superseded_and_no_others()
    {
        var cut = _older.Walls[Changed].Courses.SelectMany(course => course.Pieces).First(piece => piece.Cut != Cuts.None && piece.Bottom > _older.Walls[Changed].Courses[1].Top);
        var newer = With(_older, cut with { Product = "another block" });
        var superseded = SupersededSheets.Of(_older, newer, PaperSize.Iso).Select(sheet => sheet.Number).ToArray();
        Assert.Contains(superseded, number => number.Contains(_number, StringComparison.Ordinal));
        Assert.DoesNotContain(superseded, number => number[0] is 'S' or 'P');
        Assert.Single(superseded, number => number[0] == 'W');
        Assert.Contains(superseded, number => number[0] == 'Q');
    }

    private static Layout With(Layout layout, Piece piece)
    {
        var wall = layout.Walls[Changed];
        var courses = wall.Courses.Select(course => course with { Pieces = [.. course.Pieces.Select(one => one.Id == piece.Id ? piece : one)] });
        return layout with { Walls = layout.Walls.SetItem(Changed, wall with { Courses = [.. courses] }) };
    }
}
