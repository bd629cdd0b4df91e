using IfcCourser.Output.Sheets;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Sheets;

public static class SheetLengthsTests
{
    [Theory]
    [InlineData(15.875, "15 7/8", "1'-3 7/8\"")]
    [InlineData(0.1875, "3/16", "3/16\"")]
    [InlineData(24, "24", "2'-0\"")]
    [InlineData(-8.375, "-8 3/8", "-8 3/8\"")]
    public static void Pieces_are_in_inches_and_dimensions_in_feet_and_inches(double inches, string piece, string dimension)
    {
        var lengths = new SheetLengths(UnitSystem.Inch);
        Assert.Equal(piece, lengths.Piece(Length.FromInches(inches)));
        Assert.Equal(dimension, lengths.Dimension(Length.FromInches(inches)));
    }

    [Theory]
    [InlineData(0, "0")]
    [InlineData(250, "+250")]
    [InlineData(-20.5, "-20.5")]
    public static void Heights_carry_their_sign(double mm, string text) =>
        Assert.Equal(text, new SheetLengths(UnitSystem.Metric).Height(Length.FromMm(mm)));
}
