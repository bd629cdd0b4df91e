using IfcCourser.Output.Sheets;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Slabs;

namespace IfcCourser.Output.Tests.Sheets;

public static class SlabSheetTests
{
    /// <summary>The readings of the invented slab day on the layout of their house, in feet.</summary>
    [Fact]
    public static void No_line_of_equal_bed_runs_through_a_text_and_no_text_lies_on_another()
    {
        var readings = ReadingsReader.Load(FixtureLayouts.Survey("yarrow-slab.csv"), "ft").Value!;
        var survey = SlabSurveys.Of(FixtureLayouts.Of("yarrow/yarrow"), readings, storey: null, thickest: null).Value!;
        var view = SlabLevelSheet.Compose(survey).Views[0];
        var texts = view.Items.OfType<TextItem>().Select(text => (text.Text, Box: ItemBox.Of(text, view.Scale.Denominator))).ToList();
        var lines = view.Items.OfType<LineItem>().Where(line => line.Pen == Pen.Neighbour).ToList();

        Assert.NotEmpty(lines);
        Assert.Empty(from line in lines from text in texts where text.Box.On(line.From, line.To) is not null select text.Text);
        Assert.Empty(from i in Enumerable.Range(0, texts.Count) from j in Enumerable.Range(0, i) where texts[i].Box.Grown(-1).Overlaps(texts[j].Box.Grown(-1)) select (texts[i].Text, texts[j].Text));
    }

    /// <summary>The sheets of levels and of the course that stands on them.</summary>
    [Fact]
    public static void No_line_runs_through_a_text_of_a_slab_sheet()
    {
        var readings = ReadingsReader.Load(FixtureLayouts.Survey("yarrow-slab.csv"), "ft").Value!;
        var survey = SlabSurveys.Of(FixtureLayouts.Of("yarrow/yarrow"), readings, storey: null, thickest: null).Value!;
        Assert.Empty(TextCrossings.Of("levels", SlabLevelSheet.Compose(survey)).Concat(TextCrossings.Of("course", SlabCourseSheet.Compose(survey))));
    }

    /// <summary>Of a line from 0 to 10 along, the part inside a box from 2 to 5; none beside it; all of it from corner to corner.</summary>
    [Fact]
    public static void A_box_tells_which_part_of_a_line_is_in_it()
    {
        var box = new Box(2, -1, 5, 1);
        Assert.Equal((0.2, 0.5), box.On(new Point(0, 0), new Point(10, 0)));
        Assert.Equal((0.5, 0.8), box.On(new Point(10, 0), new Point(0, 0)));
        Assert.Null(box.On(new Point(0, 2), new Point(10, 2)));
        Assert.Null(box.On(new Point(0, 0), new Point(1, 0)));
        Assert.Equal((0.0, 1.0), box.On(new Point(2, -1), new Point(5, 1)));
    }
}
