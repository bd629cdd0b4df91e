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
            Output.WriteLine(text);
        }
    }

    /// <summary>A result that was asked for by name: said even when quiet.</summary>
    public void Data(string text) => Output.WriteLine(text);

    /// <summary>What the user should know beside the results, unless quiet.</summary>
    public void Note(string text)
    {
        if (!Quiet)
        {
            Error.WriteLine(text);
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
        Error.WriteLine(Colour && ErrorIsTerminal ? $"{Red}{Messages.ErrorPrefix}{Plain} {message}" : $"{Messages.ErrorPrefix} {message}");
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
            Error.WriteLine(text);
        }
        else if (ErrorIsTerminal)
        {
            Error.Write(string.Create(CultureInfo.InvariantCulture, $"{ClearLine}{text}"));
        }
    }

    public void EndProgress()
    {
        if (ErrorIsTerminal && !Quiet && !Verbose)
        {
            Error.Write(ClearLine);
        }
    }
}
