namespace IfcCourser.Cli.Tests;

public sealed class TerminalTests
{
    /// <summary>ECMA-48 sequences (colour, title, cursor), a bell, a return that overwrites the line, and a mark that turns the text around.</summary>
    [Theory]
    [InlineData("\u001b[31mred", "\uFFFD[31mred")]
    [InlineData("\u009b31mred", "\uFFFD31mred")]
    [InlineData("\u001b]0;title\u0007", "\uFFFD]0;title\uFFFD")]
    [InlineData("error\rdone ", "error\uFFFDdone ")]
    [InlineData("wall\u202Egnp.exe", "wall\uFFFDgnp.exe")]
    [InlineData("two\r\nlines\tand a tab", "two\nlines\tand a tab")]
    [InlineData("Außenwand – 24 cm", "Außenwand – 24 cm")]
    public void No_name_gives_the_terminal_a_command(string text, string expected)
    {
        foreach (var (say, isError) in (Sayer[])[new((terminal, words) => terminal.Result(words), false), new((terminal, words) => terminal.Data(words), false), new((terminal, words) => terminal.Note(words), true), new((terminal, words) => terminal.Fail(words), true)])
        {
            using var output = new StringWriter { NewLine = "|" };
            using var error = new StringWriter { NewLine = "|" };
            say(new Terminal(output, error, ErrorIsTerminal: false), text);
            Assert.EndsWith(expected + "|", (isError ? error : output).ToString(), StringComparison.Ordinal);
        }
    }

    private sealed record Sayer(Action<Terminal, string> Say, bool IsError);
}
