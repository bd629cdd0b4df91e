using System.Globalization;
using CsCheck;
using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

public sealed class StepValueTests
{
    [Theory]
    [InlineData("1.", 1.0)]
    [InlineData("-.5", -0.5)]
    [InlineData(".5", 0.5)]
    [InlineData("1/* c */", 1.0)]
    [InlineData("!MEASURE(1.)", 1.0)]
    [InlineData("+2.5E-3", 0.0025)]
    [InlineData("7", 7.0)]
    [InlineData("IFCLENGTHMEASURE(3.)", 3.0)]
    [InlineData("1.D", null)]
    [InlineData("1e400", null)]
    [InlineData("NaN", null)]
    [InlineData("-1.#IND", null)]
    [InlineData("'x'", null)]
    [InlineData("$", null)]
    public void RealsAreReadLeniently(string parameter, double? expected) =>
        Assert.Equal(expected, StepSource.Value(parameter).AsReal);

    [Fact]
    public void IntegersBeyondSixtyFourBitsAreReals()
    {
        Assert.Null(StepSource.Value("99999999999999999999").AsInteger);
        Assert.Equal(1e20, StepSource.Value("100000000000000000000").AsReal);
        Assert.Equal(2, StepSource.Value("2.").AsInteger);
        Assert.Equal(9_007_199_254_740_993, StepSource.Value("9007199254740993").AsInteger);
    }

    [Fact]
    public void EveryKindHasItsAccessor()
    {
        Assert.True(StepSource.Value(".T.").AsBoolean);
        Assert.False(StepSource.Value("IFCBOOLEAN(.F.)").AsBoolean);
        Assert.Null(StepSource.Value(".U.").AsBoolean);
        Assert.Equal("ELEMENT", StepSource.Value(".element.").AsEnumeration);
        Assert.Equal("1F", StepSource.Value("\"1F\"").AsBinary);
        Assert.Equal("IFCLABEL", StepSource.Value("IFCLABEL('x')").TypeName);
        Assert.Equal([1.0, 2.0], StepSource.Value("(1.,2)").AsList.Select(item => item.AsReal!.Value));
        Assert.Empty(StepSource.Value("()").AsList);
        Assert.Null(StepSource.Value("(1)").AsReference);
    }

    /// <summary>An accessor of one kind is null, or an empty list, for every other.</summary>
    [Theory]
    [InlineData("$", "")]
    [InlineData("*", "")]
    [InlineData("7", "integer real")]
    [InlineData("2.5", "real")]
    [InlineData("-3.", "integer real")]
    [InlineData("1.E17", "integer real")]
    [InlineData("1.E18", "real")]
    [InlineData("-1.E18", "real")]
    [InlineData("'x'", "string")]
    [InlineData(".X.", "enumeration")]
    [InlineData("\"0F\"", "binary")]
    [InlineData("#1", "reference")]
    [InlineData("(1)", "list")]
    [InlineData("A(7)", "type integer real")]
    [InlineData("A(B('x'))", "type string")]
    [InlineData("A((1))", "type list")]
    [InlineData("A()", "type")]
    public void AValueIsReadAsWhatItIsAndNothingElse(string parameter, string kinds)
    {
        var value = StepSource.Value(parameter);
        (string Kind, bool IsGiven)[] readings =
        [
            ("type", value.TypeName is not null),
            ("integer", value.AsInteger is not null),
            ("real", value.AsReal is not null),
            ("string", value.AsString is not null),
            ("enumeration", value.AsEnumeration is not null),
            ("binary", value.AsBinary is not null),
            ("reference", value.AsReference is not null),
            ("list", !value.AsList.IsEmpty),
        ];
        Assert.Equal(kinds, string.Join(' ', readings.Where(reading => reading.IsGiven).Select(reading => reading.Kind)));
        Assert.Equal(parameter is "$" or "*", value.IsNothing);
        Assert.Null(value.AsBoolean);
    }

    /// <summary>The most that a schema's lists need is a handful; a hundred are read.</summary>
    [Theory]
    [InlineData(99, true)]
    [InlineData(100, true)]
    [InlineData(101, false)]
    public void AHundredListsMayBeNested(int depth, bool isRead)
    {
        using var file = StepSource.Data($"#1=THING({new string('(', depth)}1{new string(')', depth)},({new string('(', 99)}1{new string(')', 99)}));");
        Assert.Equal(isRead, file.Find(1) is not null);
    }

    [Fact]
    public void NestingThatIsTooDeepIsAFaultAndNoStackOverflow()
    {
        var deep = new string('(', 100_000) + new string(')', 100_000);
        using var file = StepSource.Data($"#1=THING({deep});\n#2=THING({string.Concat(Enumerable.Repeat("X(", 100_000))}{new string(')', 100_000)});");
        Assert.Null(file.Find(1));
        Assert.Null(file.Find(2));
        Assert.All(file.Faults, fault => Assert.Contains("nested", fault.What, StringComparison.Ordinal));
        Assert.Equal(2, file.Faults.Length);
    }

    [Fact]
    public void WrittenRealsReadBackAsTheSameNumber() =>
        Gen.Double.Where(double.IsFinite).ForAll(value =>
        {
            var text = StepReal.Encode(value);
            Assert.Contains('.', text);
            Assert.Equal(value, StepSource.Value(text).AsReal!.Value);
        });

    [Theory]
    [InlineData(1, "1.")]
    [InlineData(-0.25, "-0.25")]
    [InlineData(1e20, "1.E+20")]
    [InlineData(1e-7, "1.E-07")]
    public void RealsAreWrittenWithAPointUnderAnyCulture(double value, string expected)
    {
        CultureInfo.CurrentCulture = new CultureInfo("de-DE");
        Assert.Equal(expected, StepReal.Encode(value));
    }
}
