using CsCheck;
using IfcCourser.Units;

namespace IfcCourser.Tests.Units;

public sealed class LengthTextTests
{
    [Theory]
    [InlineData("24 in", 609_600_000)]
    [InlineData("7 7/8 in", 200_025_000)]
    [InlineData("7-7/8\"", 200_025_000)]
    [InlineData("7.875 inches", 200_025_000)]
    [InlineData("1/64 in", 396_875)]
    [InlineData("5 ft 4 1/2 in", 1_638_300_000)]
    [InlineData("5'-4 1/2\"", 1_638_300_000)]
    [InlineData("5′ 4 1/2″", 1_638_300_000)]
    [InlineData("8 ft", 2_438_400_000)]
    [InlineData("624 mm", 624_000_000)]
    [InlineData("1.5 m", 1_500_000_000)]
    [InlineData("0.5mm", 500_000)]
    [InlineData(" 25 cm ", 250_000_000)]
    [InlineData("-3 mm", -3_000_000)]
    [InlineData("1/3 in", 8_466_667)]
    public void Written_lengths_are_read_to_the_nanometre(string text, long nanometres)
    {
        Assert.True(LengthText.TryParse(text, out var length, out _));
        Assert.Equal(nanometres, length.Nanometres);
    }

    [Theory]
    [InlineData("24", "has no unit")]
    [InlineData("7 7/8", "has no unit")]
    [InlineData("24 yd", "is no length")]
    [InlineData("", "is no length")]
    [InlineData("7,5 mm", "is no length")]
    [InlineData("1/0 in", "is no length")]
    [InlineData("1 in 2 ft", "is no length")]
    [InlineData("999999999 m", "too large")]
    public void What_is_no_length_is_told_apart_by_its_problem(string text, string expected)
    {
        Assert.False(LengthText.TryParse(text, out _, out var problem));
        Assert.Contains(expected, problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8 ft 3/8 in", "8'-0 3/8\"")]
    [InlineData("7 7/8 in", "7 7/8\"")]
    [InlineData("7/8 in", "7/8\"")]
    [InlineData("8 ft", "8'-0\"")]
    [InlineData("0 in", "0\"")]
    [InlineData("23 31/32 in", "2'-0\"")]
    [InlineData("1 1/2 in", "1 1/2\"")]
    [InlineData("-13 1/4 in", "-1'-1 1/4\"")]
    [InlineData("-1/64 in", "0\"")]
    public void Inch_figures_are_feet_inches_and_the_nearest_sixteenth(string text, string figure) =>
        Assert.Equal(figure, LengthText.Format(Parsed(text), UnitSystem.Inch));

    [Theory]
    [InlineData("624 mm", "624")]
    [InlineData("95.25 mm", "95.3")]
    [InlineData("0.04 mm", "0")]
    [InlineData("-62.5 mm", "-62.5")]
    public void Metric_figures_have_one_decimal_at_most(string text, string figure)
    {
        Assert.Equal(figure, LengthText.Format(Parsed(text), UnitSystem.Metric));
        Assert.Equal(figure + " mm", LengthText.WithUnit(Parsed(text), UnitSystem.Metric));
    }

    [Fact]
    public void Whole_sixteenths_survive_a_round_trip() =>
        Gen.Long[-200_000, 200_000].ForAll(sixteenths =>
        {
            var length = new Length(sixteenths * (Length.NanometresPerInch / 16));
            return Parsed(LengthText.Format(length, UnitSystem.Inch)) == length;
        });

    private static Length Parsed(string text)
    {
        Assert.True(LengthText.TryParse(text, out var length, out var problem), problem);
        return length;
    }
}
