using IfcCourser.Catalogs;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Modules;

/// <summary>
/// Masonry starts on d + 125 k and ends a joint (1 mm) before such a line; against another wall's face that joint is the run's
/// first or last. Worked by hand.
/// </summary>
public sealed class ModuleDatumsTests
{
    [Theory]
    [InlineData(Datum.Start, 6010, EndKind.Free, EndKind.Free, 0)]
    [InlineData(Datum.Start, 6010, EndKind.Corner, EndKind.Free, 0)]
    [InlineData(Datum.Start, 6010, EndKind.Tee, EndKind.Free, 1)]
    [InlineData(Datum.End, 5999, EndKind.Free, EndKind.Free, 0)]
    [InlineData(Datum.End, 6010, EndKind.Free, EndKind.Free, 11)]
    [InlineData(Datum.End, 6010, EndKind.Free, EndKind.Tee, 10)]
    public void The_lines_start_where_the_rule_says(Datum datum, double length, EndKind start, EndKind end, double line)
    {
        var wall = WallSketch.Straight(Length.FromMm(length), Length.FromMm(2519), Length.FromMm(240)) with { Start = new WallEnd(start, []), End = new WallEnd(end, []) };
        var rules = LayoutRules.For(BuiltInRuleSets.Get("eu") with { Datum = datum }, BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);
        Assert.Equal(line, ModuleDatums.Fixed(wall, rules)!.Value.Mm);
    }

    [Fact]
    public void The_best_datum_is_left_to_the_openings() => Assert.Null(ModuleDatums.Fixed(
        WallSketch.Straight(Length.FromMm(6010), Length.FromMm(2519), Length.FromMm(240)),
        LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move)));
}
