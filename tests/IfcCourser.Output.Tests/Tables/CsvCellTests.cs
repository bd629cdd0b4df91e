using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Tests.Tables;

public sealed class CsvCellTests
{
    [Theory]
    [InlineData(null, "")]
    [InlineData("North wall", "North wall")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("6\" wall", "\"6\"\" wall\"")]
    [InlineData("-12.5", "-12.5")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("+cmd|' /C calc'!A0", "'+cmd|' /C calc'!A0")]
    [InlineData("-W1", "'-W1")]
    [InlineData("\t=1+1", "'\t=1+1")]
    [InlineData("\r=1+1", "\"'\r=1+1\"")]
    [InlineData("\n=1+1", "\"'\n=1+1\"")]
    [InlineData("\uFF1D1+1", "'\uFF1D1+1")]
    [InlineData("+12.5", "+12.5")]
    [InlineData("-1e3", "-1e3")]
    [InlineData("=HYPERLINK(\"x\",\"y\")", "\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"")]
    public void A_cell_is_quoted_where_it_must_be_and_never_a_formula(string? text, string expected) => Assert.Equal(expected, CsvCell.Of(text));
}
