using System.Xml.Linq;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Svg;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Svg;

public static class SvgWriterTests
{
    [Fact]
    public static void Every_item_matches_the_reviewed_picture_in_every_culture() =>
        Assert.All(Cultures.Each(() => Written(EveryItem.Sheet)), bytes => Golden.Matches("every-item.svg", bytes));

    [Theory]
    [MemberData(nameof(Sheets.WallSheetTests.Walls), MemberType = typeof(Sheets.WallSheetTests))]
    public static void Is_well_formed_and_says_every_text_of_the_sheet(string wall)
    {
        var sheet = Samples.Sheets[wall].Sheet;
        using var stream = new MemoryStream(Written(sheet));
        var texts = XDocument.Load(stream).Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value);
        Assert.Equal(Lowering.Lower(sheet).OfType<TextItem>().Select(text => text.Text), texts, StringComparer.Ordinal);
    }

    [Fact]
    public static void What_does_not_print_is_not_drawn()
    {
        var line = new LineItem(Pen.NotPrinted, new Point(1, 1), new Point(2, 2));
        var bare = EveryItem.Sheet with { Views = [], Items = [] };
        Assert.Equal(Written(bare), Written(bare with { Items = [line] }));
    }

    private static byte[] Written(Sheet sheet)
    {
        using var stream = new MemoryStream();
        SvgWriter.Write(sheet, stream);
        return stream.ToArray();
    }
}
