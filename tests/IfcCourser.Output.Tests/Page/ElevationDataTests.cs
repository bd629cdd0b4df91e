using System.Text.Json.Nodes;
using IfcCourser.Layouts;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Page;

public static class ElevationDataTests
{
    public static TheoryData<string> Walls { get; } = new(Samples.Sheets.Keys);

    /// <summary>Lengths are whole tenths of a millimetre, or sixty-fourths of an inch: what the samples are drawn to is exact in them.</summary>
    [Theory]
    [MemberData(nameof(Walls))]
    public static void Every_piece_is_read_back_where_it_lies(string name)
    {
        var (layout, wall, _) = Samples.Sheets[name];
        var tick = layout.Rules.Catalog.Units == UnitSystem.Inch ? 396_875 : 100_000;
        var drawn = PageReading.Of(layout).Data["walls"]!.AsArray().Single(one => one!["name"]!.GetValue<string>() == name)!;
        var pieces = drawn["courses"]!.AsArray().SelectMany(course => Pieces(drawn, course!.AsArray())).ToList();
        Assert.All(wall.Courses.SelectMany(course => course.Pieces).Zip(pieces, (laid, read) => (laid, read)), pair =>
        {
            var (laid, read) = pair;
            Assert.Equal((Ticks(laid.From), Ticks(laid.Bottom), laid.Cut == Cuts.None), (read.From, read.Bottom, read.IsUncut));
            // Ends of raked pieces lie between ticks: start and length are rounded each.
            Assert.InRange(read.To, Ticks(laid.To) - 1, Ticks(laid.To) + 1);
            Assert.InRange(read.Top, Ticks(laid.Top) - 1, Ticks(laid.Top) + 1);
        });
        Assert.Equal(wall.Courses.Sum(course => course.Pieces.Length), pieces.Count);

        long Ticks(Length length) => (long)Math.Round(length.Nanometres / (double)tick, MidpointRounding.AwayFromZero);
    }

    [Fact]
    public static void A_piece_under_a_sill_in_mid_course_keeps_its_own_bottom()
    {
        var wall = Samples.Metric.Walls[0];
        var (course, raised) = (wall.Courses[2], wall.Courses[2].Pieces[0] with { Bottom = wall.Courses[2].Bottom + Samples.Mm(50) });
        var changed = wall with { Courses = wall.Courses.SetItem(2, course with { Pieces = course.Pieces.SetItem(0, raised) }) };
        var drawn = PageReading.Of(Samples.Metric with { Walls = [changed] }).Data["walls"]![0]!;
        Assert.Equal((raised.Bottom.Nanometres / 100_000, raised.Top.Nanometres / 100_000), Pieces(drawn, drawn["courses"]![2]!.AsArray()).Select(piece => (piece.Bottom, piece.Top)).First());
    }

    [Fact]
    public static void A_finding_without_a_place_has_no_mark() =>
        Assert.Equal("""[1,"warning"]""", PageReading.Of(Samples.Metric).Data["walls"]![0]!["findings"]![0]!.ToJsonString());

    private static IEnumerable<(long From, long To, long Bottom, long Top, bool IsUncut)> Pieces(JsonNode wall, JsonArray course)
    {
        for (var i = 4; i < course.Count; i++)
        {
            var (kind, from, bottom) = course[i] is JsonArray raised
                ? ((int)raised[0]!, (long)raised[1]!, (long)raised[2]!)
                : ((int)course[i]!, (long)course[++i]!, (long)course[2]!);
            var shape = wall["kinds"]![kind]!;
            yield return (from, from + (long)shape[2]!, bottom, bottom + (long)shape[3]!, (string)shape[1]! is "full" or "part");
        }
    }
}
