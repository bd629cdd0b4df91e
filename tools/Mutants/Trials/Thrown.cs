using System.Runtime.ExceptionServices;

namespace Mutants.Trials;

/// <summary>Remembers where an exception came from that the command turns into a message.</summary>
internal sealed class Thrown : IDisposable
{
    private readonly List<string> _seen = [];

    public Thrown()
    {
        AppDomain.CurrentDomain.FirstChanceException += Note;
    }

    /// <summary>Type, message and the topmost frames in this product.</summary>
    public string Last
    {
        get
        {
            lock (_seen)
            {
                return _seen.Count == 0 ? "unknown" : _seen[^1];
            }
        }
    }

    public void Dispose() => AppDomain.CurrentDomain.FirstChanceException -= Note;

    private void Note(object? sender, FirstChanceExceptionEventArgs args)
    {
        const int Frames = 6;
        if (args.Exception is AggregateException or OperationCanceledException or IOException)
        {
            return;
        }

        var frames = Environment.StackTrace.Split('\n')
            .Where(line => line.Contains(" IfcCourser.", StringComparison.Ordinal) || line.Contains(" NetTopologySuite.", StringComparison.Ordinal))
            .Take(Frames)
            .Select(line => line.Trim());
        lock (_seen)
        {
            // The first report of an exception that is thrown again on its way is the one that tells where.
            var text = $"{args.Exception.GetType().Name}: {args.Exception.Message}";
            if (_seen.Count == 0 || !_seen[^1].StartsWith(text, StringComparison.Ordinal))
            {
                _seen.Add($"{text} | {string.Join(" | ", frames)}");
            }
        }
    }
}
