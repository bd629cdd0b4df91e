using System.Collections.Immutable;
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

    private static DimensionItem[] Dimensions() => [.. _short.Value.Plan.Views.SelectMany(view => view.Items).OfType<DimensionItem>()];

    /// <summary>Pieces of the middle third only.</summary>
    private static Course Middle(Course course)
    {
        var pieces = course.Pieces.Skip(course.Pieces.Length / 3).Take(course.Pieces.Length / 3).ToImmutableArray();
        return course with { Pieces = pieces, Spans = [new Span(new Interval(pieces[0].From, pieces[^1].To), EdgeKind.Free, EdgeKind.Free)] };
    }
}
