using System.Globalization;
using IfcCourser.Findings;

namespace IfcCourser.Cli;

/// <summary>Where words go: results to standard output, messages and progress to standard error.</summary>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
/// <param name="ErrorIsTerminal">Someone watches standard error: progress and colour make sense.</param>
internal sealed record Terminal(TextWriter Output, TextWriter Error, bool ErrorIsTerminal)
{
    private const string ClearLine = "\r\u001b[K";
    private const string Red = "\u001b[31m";
    private const string Plain = "\u001b[0m";

    /// <summary>Only errors are said.</summary>
    public bool Quiet { get; init; }

    /// <summary>Each step is said.</summary>
    public bool Verbose { get; init; }

    public bool Colour { get; init; }

    /// <summary>Ends what would go on for ever.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>A result, unless quiet.</summary>
    public void Result(string text)
    {
        if (!Quiet)
        {
            Output.WriteLine(Printable(text));
        }
    }

    /// <summary>A result that was asked for by name: said even when quiet.</summary>
    public void Data(string text) => Output.WriteLine(Printable(text));

    /// <summary>What the user should know beside the results, unless quiet.</summary>
    public void Note(string text)
    {
        if (!Quiet)
        {
            Error.WriteLine(Printable(text));
        }
    }

    /// <summary>Says why the run ends, and with which status.</summary>
    public ExitStatus End(Fault fault, ExitStatus status)
    {
        Fail(fault);
        return status;
    }

    public void Fail(Fault fault) => Fail(fault.ToString());

    public void Fail(string message)
    {
        EndProgress();
        Error.WriteLine(Colour && ErrorIsTerminal ? $"{Red}{Messages.ErrorPrefix}{Plain} {Printable(message)}" : $"{Messages.ErrorPrefix} {Printable(message)}");
    }

    /// <summary>A step of the run: shown in passing on a terminal, kept where verbose.</summary>
    public void Step(string text)
    {
        if (Quiet)
        {
            return;
        }

        if (Verbose)
        {
            Error.WriteLine(Printable(text));
        }
        else if (ErrorIsTerminal)
        {
            Error.Write(string.Create(CultureInfo.InvariantCulture, $"{ClearLine}{Printable(text)}"));
        }
    }

    public void EndProgress()
    {
        if (ErrorIsTerminal && !Quiet && !Verbose)
        {
            Error.Write(ClearLine);
        }
    }

    /// <summary>Names come out of models that strangers made: a control character in them would be a command to the terminal.</summary>
    private static string Printable(string text)
    {
        const char Replacement = '\uFFFD';
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal);
        return lines.Any(IsCommand) ? string.Concat(lines.Select(c => IsCommand(c) ? Replacement : c)) : lines;
    }

    /// <summary>Also what turns the direction in which the text around it is read.</summary>
    private static bool IsCommand(char c) => (char.IsControl(c) && c is not ('\n' or '\t')) || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
