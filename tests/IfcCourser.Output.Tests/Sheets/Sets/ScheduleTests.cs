using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>Schedules, storey poles and details against the layout they are drawn from.</summary>
public static class ScheduleTests
{
    private static readonly Layout _yarrow = FixtureLayouts.Of("yarrow/yarrow");

    private static readonly Sheet[] _sheets = [.. DrawingSet.Of(_yarrow, PaperSize.For(UnitSystem.Inch)).Where(sheet => sheet.Number[0] is 'Q' or 'D').Select(sheet => sheet.Compose())];

    /// <summary>Columns "No" of the two tables of blocks and of the one of shapes: with the pieces laid they come to all pieces.</summary>
    [Fact]
    public static void Every_piece_is_counted_once()
    {
        var (uncut, sawn) = (Rows("Blocks laid uncut").Sum(), Rows("Blocks to be sawn, by size").Sum() + Rows("Blocks sawn to a shape").Sum());
        var pieces = _yarrow.Walls.SelectMany(wall => wall.Courses).SelectMany(course => course.Pieces).ToArray();
        Assert.Equal((pieces.Count(piece => piece.Cut == Cuts.None), pieces.Count(piece => piece.Cut != Cuts.None)), (uncut, sawn));
    }

    [Fact]
    public static void Every_lintel_and_opening_is_listed_with_its_wall()
    {
        var texts = Texts("Q01").ToHashSet(StringComparer.Ordinal);
        var numbered = _yarrow.Walls.Select(wall => wall.Identity.StepId).Concat(_yarrow.Skipped.Select(wall => wall.Identity.StepId)).Order().ToList();
        foreach (var wall in _yarrow.Walls)
        {
            var number = FormattableString.Invariant($"W{numbered.IndexOf(wall.Identity.StepId) + 1:000}");
            Assert.All(wall.Lintels, lintel => Assert.Contains($"{number} {lintel.Id}", texts));
        }
    }

    /// <summary>Tops of courses from the level line, in feet and inches, beside each pole.</summary>
    [Fact]
    public static void Poles_bear_the_top_of_every_course_of_every_wall()
    {
        var heights = _sheets.Single(sheet => sheet.Title.Title == "Storey poles").Views[0].Items.OfType<DimensionItem>().Select(dimension => dimension.Measured).ToList();
        var wanted = _yarrow.Walls.SelectMany(wall => wall.Courses.Select(course => Math.Abs((course.Top - wall.LevelLine).Mm))).Distinct();
        Assert.All(wanted, height => Assert.Contains(heights, drawn => Math.Abs(drawn - height) < 0.01));
    }

    /// <summary>Yarrow has each of them.</summary>
    [Fact]
    public static void Details_are_drawn_of_each_kind_that_occurs()
    {
        var names = _sheets.Single(sheet => sheet.Title.Title == "Details").Views.Select(view => view.Name.Split([':', ','])[0]).Order(StringComparer.Ordinal);
        Assert.Equal(["Bearing of a lintel", "Bond beam", "Corner", "First course", "Jamb and sill", "Movement joint", "Tee"], names, StringComparer.Ordinal);
    }

    private static IEnumerable<string> Texts(string number) => Lowering.Lower(_sheets.Single(sheet => sheet.Title.IdentificationNumber == number)).OfType<TextItem>().Select(text => text.Text);

    /// <summary>Whole numbers under the heading "No" of a table's parts, by where they stand: in the column of that heading, down to the next title.</summary>
    private static IEnumerable<int> Rows(string title)
    {
        var texts = Lowering.Lower(_sheets.Single(sheet => sheet.Title.IdentificationNumber == "Q01")).OfType<TextItem>().ToArray();
        foreach (var head in texts.Where(text => text.Text == title))
        {
            var below = texts.Where(text => text.Pen == Pen.Heading && text.Height == 3 && Math.Abs(text.At.X - head.At.X) < 0.1 && text.At.Y < head.At.Y)
                .Select(text => text.At.Y).DefaultIfEmpty(0).Max();
            var heading = texts.Where(text => text.Text == "No" && text.At.Y < head.At.Y && text.At.Y > below && text.At.X > head.At.X && text.At.X < head.At.X + 86).MaxBy(text => text.At.Y)!;
            foreach (var text in texts.Where(text => Math.Abs(text.At.X - heading.At.X) < 0.01 && text.At.Y < heading.At.Y && text.At.Y > below))
            {
                yield return int.Parse(text.Text, System.Globalization.CultureInfo.InvariantCulture);
            }
        }
    }
}
