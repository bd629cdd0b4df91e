using System.Diagnostics;

namespace IfcCourser.Cli.Batch;

/// <summary>Tells how a batch goes on: a line in place on a terminal, else a line for each tenth; failures at once.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="lots">How many are to be done.</param>
/// <param name="work">Bytes of models to be laid out, each way they stand.</param>
internal sealed class BatchProgress(Terminal terminal, int lots, long work)
{
    private const int Tenths = 10;

    private readonly Lock _telling = new();
    private readonly long _began = Stopwatch.GetTimestamp();
    private int _done;
    private int _failed;
    private long _workDone;

    /// <summary>A lot is done or has failed.</summary>
    /// <param name="size">Bytes laid out for it; zero for a repeat.</param>
    public void Done(string lot, string? failure, long size)
    {
        lock (_telling)
        {
            _done++;
            _workDone += size;
            if (failure is not null)
            {
                _failed++;
                terminal.EndProgress();
                terminal.Note(Messages.LotFailed(lot, failure));
            }

            var elapsed = Stopwatch.GetElapsedTime(_began);
            var line = Messages.BatchProgress(_done, lots, _failed, _done / Math.Max(elapsed.TotalSeconds, 0.001), Left(elapsed));
            if (terminal.ErrorIsTerminal || terminal.Verbose)
            {
                terminal.Step(line);
            }
            else if (_done * Tenths / lots > (_done - 1) * Tenths / lots)
            {
                terminal.Note(line);
            }
        }
    }

    /// <summary>By the bytes that are left: repeats take next to no time.</summary>
    private TimeSpan? Left(TimeSpan elapsed) => _workDone > 0 && _workDone < work ? elapsed * ((double)(work - _workDone) / _workDone) : null;
}
