using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

/// <summary>Texts as ISO 10303-21:2016, 6.4 and 12 write them.</summary>
public sealed class StepEncoderTests
{
    [Theory]
    [InlineData("$")]
    [InlineData("*")]
    [InlineData("-7")]
    [InlineData("2.5")]
    [InlineData("'it''s'")]
    [InlineData(".ELEMENT.")]
    [InlineData("\"0F\"")]
    [InlineData("#12")]
    [InlineData("()")]
    [InlineData("(1,(2,3),$)")]
    [InlineData("IFCLABEL('x')")]
    [InlineData("OUTER(INNER(1))")]
    public void EveryKindIsWrittenAsItWasRead(string parameter) => Assert.Equal(parameter, StepEncoder.Encode(StepSource.Value(parameter)));

    /// <summary>The standard has no text for what is no number: the value is left out.</summary>
    [Fact]
    public void WhatIsNoNumberIsLeftOut() => Assert.Equal("($,1.)", StepEncoder.Encode(StepValue.List(StepSource.Value("NaN"), StepValue.Real(1))));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void InfinitiesAndNaNHaveNoText(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => StepReal.Encode(value));

    [Fact]
    public void AnInstanceIsNumberNameAndParameters()
    {
        Assert.Equal("#3=DOOR($,'a');", StepEncoder.Instance(3, "DOOR", StepValue.Omitted, StepValue.String("a")));
        Assert.Equal("#4=DOOR();", StepEncoder.Instance(4, "DOOR"));
    }
}
