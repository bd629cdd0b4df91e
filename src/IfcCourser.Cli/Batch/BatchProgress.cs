using System.Diagnostics;

namespace IfcCourser.Cli.Batch;

/// <summary>How a batch goes on. Told as a line for each tenth, or for each lot where verbose; on a terminal by <see cref="LiveProgress"/>. Failures are told at once.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="lots">How many are to be done.</param>
/// <param name="work">Bytes of models to be laid out, each way they stand.</param>
internal sealed class BatchProgress(Terminal terminal, int lots, long work)
{
    private const int Tenths = 10;

    /// <summary>Held while lines are written, which can wait for a bar that is being drawn; what the bar asks for must never wait for it.</summary>
    private readonly Lock _telling = new();
    private readonly Lock _counting = new();
    private readonly long _began = Stopwatch.GetTimestamp();
    private int _done;
    private int _failed;
    private long _workDone;

    /// <summary>Whether someone watches: then a bar is drawn.</summary>
    public bool IsLive => terminal is { ErrorIsTerminal: true, Verbose: false, Quiet: false };

    /// <summary>Where failures are told.</summary>
    public Action<string> Say { get; set; } = terminal.Note;

    /// <summary>How much is done, from 0 to 1: by the bytes laid out, for repeats take next to no time.</summary>
    public double Share
    {
        get
        {
            lock (_counting)
            {
                return work > 0 ? (double)_workDone / work : (double)_done / lots;
            }
        }
    }

    /// <summary>A lot is done or has failed.</summary>
    /// <param name="size">Bytes laid out for it; zero for a repeat.</param>
    public void Done(string lot, string? failure, long size)
    {
        lock (_telling)
        {
            var done = Count(failure is not null, size);
            if (failure is not null)
            {
                Say(Messages.LotFailed(lot, failure));
            }

            if (!IsLive && (terminal.Verbose || done * Tenths / lots > (done - 1) * Tenths / lots))
            {
                terminal.Note(Line());
            }
        }
    }

    /// <summary>Lots done and failed, how many a second, and the time left as it stands now.</summary>
    public string Line()
    {
        lock (_counting)
        {
            var elapsed = Stopwatch.GetElapsedTime(_began);
            return Messages.BatchProgress(_done, lots, _failed, _done / Math.Max(elapsed.TotalSeconds, 0.001), Left(elapsed));
        }
    }

    private int Count(bool isFailed, long size)
    {
        lock (_counting)
        {
            _failed += isFailed ? 1 : 0;
            _workDone += size;
            return ++_done;
        }
    }

    private TimeSpan? Left(TimeSpan elapsed) => _workDone > 0 && _workDone < work ? elapsed * ((double)(work - _workDone) / _workDone) : null;
}
