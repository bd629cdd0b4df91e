using CsCheck;
using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

public sealed class StepStringTests
{
    [Theory]

    // ISO 10303-21:2016, 6.4.3, its tables of directives; the characters named are those of ISO 8859 and ISO 10646.
    [InlineData(@"it''s", "it's")]
    [InlineData(@"a\\b", @"a\b")]
    [InlineData(@"\X\E4rger", "ärger")]
    [InlineData(@"\S\d", "ä")]
    [InlineData(@"\PE\\S\0\S\1", "АБ")]
    [InlineData(@"\X2\03B103B2\X0\-", "αβ-")]
    [InlineData(@"\X4\0001F600\X0\", "😀")]
    [InlineData(@"\X2\D83DDE00\X0\", "😀")]
    [InlineData(@"\PI\\S\p", "ğ")]
    [InlineData(@"\PE\\S\0\PA\\S\d", "Аä")]
    [InlineData(@"\X4\000000E40000FFFD0001F600\X0\", "ä\uFFFD😀")]

    // Not in the standard, but in files: raw UTF-8, paths with single backslashes, directives cut short.
    [InlineData("Wände", "Wände")]
    [InlineData(@"C:\temp", @"C:\temp")]
    [InlineData(@"\X2\00E4", "ä")]
    [InlineData(@"\X\", @"\X\")]
    [InlineData(@"a\X2\D83D\X0\b", "a\uFFFDb")]
    [InlineData(@"\X4\00110000FFFFFFFF\X0\", "\uFFFD\uFFFD")]
    [InlineData(@"\X\E", @"\X\E")]
    [InlineData(@"\X\GG", @"\X\GG")]
    [InlineData(@"\X2\00E4 b", "ä b")]
    [InlineData(@"\S\", @"\S\")]
    [InlineData(@"\PJ\x", @"\PJ\x")]
    [InlineData(@"\P@\x", @"\P@\x")]
    [InlineData(@"\PA", @"\PA")]
    [InlineData(@"\PAx", @"\PAx")]
    [InlineData(@"\X2\0000\X0\", "\0")]
    public void DirectivesAreDecoded(string raw, string expected) =>
        Assert.Equal(expected, StepSource.Value($"'{raw}'").AsString);

    [Fact]
    public void AQuoteThatIsNotDoubledIsTaken() => Assert.Equal("it's'", StepString.Decode("it's'"u8));

    [Fact]
    public void RawLatinOneBytesAreTaken() => Assert.Equal("Wände", StepString.Decode([(byte)'W', 0xE4, .. "nde"u8]));

    [Theory]
    [InlineData("it's", "'it''s'")]
    [InlineData(@"a\b", @"'a\\b'")]
    [InlineData("Wände 3", @"'W\X2\00E4\X0\nde 3'")]
    [InlineData("αβ", @"'\X2\03B103B2\X0\'")]
    [InlineData("a\nb", @"'a\X2\000A\X0\b'")]
    [InlineData(" ~\u007F", @"' ~\X2\007F\X0\'")]
    public void TextIsWrittenInBasicCharacters(string text, string expected) => Assert.Equal(expected, StepString.Encode(text));

    [Fact]
    public void WrittenTextReadsBack() =>
        Gen.String.Where(text => !text.Any(char.IsSurrogate)).ForAll(text => Assert.Equal(text, StepSource.Value(StepString.Encode(text)).AsString));
}
