using System.Runtime.InteropServices;

namespace IfcCourser.Cli;

/// <summary>How the process ends at Ctrl-C, SIGTERM and SIGHUP: what is not finished is undone, one line says so, and the status is 128 and the signal's number.</summary>
internal static class Interruption
{
    private static readonly Lock _lock = new();
    private static readonly List<Action> _undo = [];

    /// <summary>Heeds the signals until disposed of.</summary>
    public static IDisposable Heed(Terminal terminal)
    {
        (PosixSignal Signal, ExitStatus Status)[] signals =
            [(PosixSignal.SIGINT, ExitStatus.Interrupted), (PosixSignal.SIGTERM, ExitStatus.Terminated), (PosixSignal.SIGHUP, ExitStatus.HungUp)];
        return new Registered([.. signals.Select(signal => PosixSignalRegistration.Create(signal.Signal, context =>
        {
            context.Cancel = true;
            End(terminal, signal.Status);
        }))]);
    }

    /// <summary>Has something done where a signal ends the process before the value returned is disposed of.</summary>
    /// <param name="undo">Called on another thread, at most once. It may take locks, and keeps them: no work goes on behind it.</param>
    public static IDisposable Undo(Action undo)
    {
        lock (_lock)
        {
            _undo.Add(undo);
        }

        return new Pending(undo);
    }

    private static void End(Terminal terminal, ExitStatus status)
    {
        lock (_lock)
        {
            foreach (var undo in Enumerable.Reverse(_undo))
            {
                try
                {
                    undo();
                }
                catch (Exception e) when (OutputFolder.IsExpected(e))
                {
                    // What stays behind is named so that nobody takes it for a result.
                }
            }

            terminal.Fail(Messages.Stopped);
            Environment.Exit((int)status);
        }
    }

    private sealed class Registered(PosixSignalRegistration[] signals) : IDisposable
    {
        public void Dispose() => Array.ForEach(signals, signal => signal.Dispose());
    }

    private sealed class Pending(Action undo) : IDisposable
    {
        public void Dispose()
        {
            lock (_lock)
            {
                _undo.Remove(undo);
            }
        }
    }
}
