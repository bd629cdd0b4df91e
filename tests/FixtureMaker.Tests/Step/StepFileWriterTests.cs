using FixtureMaker.Step;

namespace FixtureMaker.Tests.Step;

public class StepFileWriterTests
{
    // ISO 10303-21:2016, 6.4.3: apostrophe and reverse solidus are doubled, other letters go into \X2\ ... \X0\.
    [Theory]
    [InlineData("plain", "'plain'")]
    [InlineData("Don't", "'Don''t'")]
    [InlineData(@"a\b", @"'a\\b'")]
    [InlineData("Süd", @"'S\X2\00FC\X0\d'")]
    [InlineData("блок", @"'\X2\0431\X0\\X2\043B\X0\\X2\043E\X0\\X2\043A\X0\'")]
    public void A_string_is_written_in_ASCII(string text, string expected) => Assert.Equal(expected, StepFileWriter.Quote(text));

    // ISO 10303-21:2016, 6.4.2: a real has a decimal point.
    [Theory]
    [InlineData(0, "0.")]
    [InlineData(-1e-13, "0.")]
    [InlineData(9999, "9999.")]
    [InlineData(0.00001, "0.00001")]
    [InlineData(2d / 3, "0.666666666667")]
    [InlineData(-0.315, "-0.315")]
    public void A_real_has_a_point(double value, string expected) => Assert.Equal(expected, StepFileWriter.Real(value));

    [Fact]
    public void Attributes_of_every_kind_are_written_as_the_exchange_structure_asks()
    {
        var writer = new StepFileWriter();
        var first = writer.Add("IFCDIRECTION", new[] { 0d, 1d });
        writer.Add("IFCX", first, null, Derived.Value, Keyword.True, 3, new Typed("IFCLABEL", "a"), new[] { first, first });
        Assert.Contains(
            "#1=IFCDIRECTION((0.,1.));\n#2=IFCX(#1,$,*,.T.,3,IFCLABEL('a'),(#1,#1));\n", writer.Finish(""), StringComparison.Ordinal);
    }
}
