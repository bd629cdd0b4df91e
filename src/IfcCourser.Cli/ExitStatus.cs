namespace IfcCourser.Cli;

/// <summary>What the process says to its caller.</summary>
internal enum ExitStatus
{
    Done = 0,

    /// <summary>Done, with findings at or above --fail-on.</summary>
    Findings = 1,

    /// <summary>The command line, the catalog or the rules are wrong.</summary>
    Usage = 2,

    /// <summary>The model can't be read.</summary>
    Unreadable = 3,

    /// <summary>An output can't be written.</summary>
    Unwritable = 4,

    /// <summary>A defect of this program (EX_SOFTWARE of sysexits.h).</summary>
    Defect = 70,

    /// <summary>Stopped by the terminal's end (128 + SIGHUP, as shells report it).</summary>
    HungUp = 129,

    /// <summary>Stopped by the user (128 + SIGINT).</summary>
    Interrupted = 130,

    /// <summary>Stopped by another program (128 + SIGTERM).</summary>
    Terminated = 143,
}
