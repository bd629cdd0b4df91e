using IfcCourser.Settings;

namespace IfcCourser.Tests.Settings;

public sealed class NearestNameTests
{
    [Theory]
    [InlineData("lenght", "length")]
    [InlineData("hieght", "height")]
    [InlineData("kef", "kerf")]
    [InlineData("kerff", "kerf")]
    [InlineData("karf", "kerf")]
    [InlineData("banana", null)]
    [InlineData("", null)]
    public void A_slip_of_a_letter_is_understood_a_different_word_is_not(string written, string? meant) =>
        Assert.Equal(meant, NearestName.Of(written, ["height", "length", "kerf"]));

    [Fact]
    public void Where_nothing_is_known_nothing_is_near() => Assert.Null(NearestName.Of("length", []));

    [Fact]
    public void Names_that_hold_the_words_come_before_those_that_look_alike_and_case_does_not_count() =>
        Assert.Equal("EG Erdgeschoss, OG, Dach", string.Join(", ", NearestName.Ranked("eg*", ["Dach", "OG", "EG Erdgeschoss", "OG"])));
}
