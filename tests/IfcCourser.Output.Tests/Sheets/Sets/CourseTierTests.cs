using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>Running dimensions of a plan where a course begins far from its wall's end, as under a slope or between walls of another storey.</summary>
public static class CourseTierTests
{
    /// <summary>One wall with the middle of its first course.</summary>
    private static readonly Lazy<(Layout Layout, Sheet Plan)> _short = new(() =>
    {
        var layout = FixtureLayouts.Of("sorrel/sorrel", "aac-mm", "eu");
        layout = layout with { Walls = [.. layout.Walls.Where(wall => wall.Identity.Storey == layout.Walls[0].Identity.Storey).Take(1).Select(wall => wall with { Courses = [Middle(wall.Courses[0])], Openings = [] })] };
        return (layout, DrawingSet.Of(layout, PaperSize.For(layout.Rules.Catalog.Units)).First(entry => entry.Number == "P01").Compose());
    });

    [Fact]
    public static void Tiers_stand_outside_all_that_they_measure()
    {
        var dimensions = Dimensions();
        var measured = Box.Around(dimensions.Select(d => d.To));
        Assert.All(dimensions, d => Assert.False(
            d.Axis == DimensionAxis.Horizontal ? d.Line > measured.Bottom && d.Line < measured.Top : d.Line > measured.Left && d.Line < measured.Right, d.Text));
    }

    [Fact]
    public static void First_and_last_block_of_the_course_have_numbers()
    {
        var (wall, pieces) = (_short.Value.Layout.Walls[0], _short.Value.Layout.Walls[0].Courses[0].Pieces);
        Assert.True(pieces[0].From.Mm > 1000 && wall.Frame.Length.Mm - pieces[^1].To.Mm > 1000);
        var stops = Dimensions().Where(d => d.Prefix.Contains("block", StringComparison.Ordinal)).ToDictionary(d => d.Prefix.Trim().Split(' ')[1], StringComparer.Ordinal);
        var ends = Dimensions().Where(d => d.Axis == stops["first"].Axis && d.Prefix.Trim().Length == 0).Select(Along).Order().ToArray();
        Assert.Equal(2, ends.Length);
        var (first, last) = (Along(stops["first"]), Along(stops["last"]));
        Assert.Equal(pieces[0].From.Mm, first < last ? first - ends[0] : ends[1] - first, 1e-6);
        Assert.Equal(wall.Frame.Length.Mm - pieces[^1].To.Mm, first < last ? ends[1] - last : last - ends[0], 1e-6);

        static double Along(DimensionItem d) => d.Axis == DimensionAxis.Horizontal ? d.To.X : d.To.Y;
    }

    /// <summary>Whole walls end where their frames do: nothing is added to their numbers.</summary>
    [Fact]
    public static void Whole_courses_have_no_such_numbers()
    {
        var layout = FixtureLayouts.Of("sorrel/sorrel", "aac-mm", "eu");
        var plan = DrawingSet.Of(layout, PaperSize.For(layout.Rules.Catalog.Units)).First(entry => entry.Number == "P01").Compose();
        Assert.DoesNotContain(plan.Views.SelectMany(view => view.Items).OfType<DimensionItem>(), d => d.Prefix.Contains("block", StringComparison.Ordinal));
    }

    /// <summary>No tier measures a wall askew: the ends of the face that its sheet shows stand in a table, as far apart as the face is long, and sloping as 3 to 4, as in the model; the table over it has walls named by the same letters.</summary>
    [Theory]
    [InlineData("junctions/corner-obtuse")]
    [InlineData("junctions/corner-acute")]
    public static void Walls_askew_have_their_ends_in_a_table(string model)
    {
        var layout = FixtureLayouts.Of(model, "aac-mm", "eu");
        var texts = DrawingSet.Of(layout, PaperSize.For(layout.Rules.Catalog.Units)).First(entry => entry.Number == "P01").Compose().Items.OfType<TextItem>().ToArray();
        var (a, b) = (End("A"), End("B"));
        var length = Math.Sqrt(Math.Pow(b.X - a.X, 2) + Math.Pow(b.Y - a.Y, 2));
        Assert.Contains(layout.Walls, wall => Math.Abs((wall.Wall.RightFace.To - wall.Wall.RightFace.From).Mm - length) < 0.2);
        Assert.Equal(3.0 / 4, Math.Abs((b.X - a.X) / (b.Y - a.Y)), 1e-3);

        Point End(string letter)
        {
            var end = texts.Where(text => text.Text == letter && text.Pen == Pen.Text).MinBy(text => text.At.Y)!;
            var numbers = texts.Where(text => text.At.Y == end.At.Y && text.At.X > end.At.X).OrderBy(text => text.At.X).Select(text => text.Text).Take(2)
                .Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray();
            return new Point(numbers[0], numbers[1]);
        }
    }

    private static DimensionItem[] Dimensions() => [.. _short.Value.Plan.Views.SelectMany(view => view.Items).OfType<DimensionItem>()];

    /// <summary>Pieces of the middle third only.</summary>
    private static Course Middle(Course course)
    {
        var pieces = course.Pieces.Skip(course.Pieces.Length / 3).Take(course.Pieces.Length / 3).ToImmutableArray();
        return course with { Pieces = pieces, Spans = [new Span(new Interval(pieces[0].From, pieces[^1].To), EdgeKind.Free, EdgeKind.Free)] };
    }
}
