using System.Security.Cryptography;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>
/// A copy of a file with instances added before the end of its last DATA section. The bytes up to there are kept as they are,
/// save two strings of the header and instances that are dropped or replaced. A comment behind the section tells where the added ones start
/// and the SHA-256 of all bytes before it, so that a later run can cut them again (<see cref="StepFrame"/>). There is none where instances are
/// replaced: these may refer to added ones, and would be left without what they refer to.
/// </summary>
public sealed class StepAppender
{
    private readonly StepFile _file;
    private readonly string _owner;
    private readonly HashSet<long> _dropped;
    private readonly StepFrame? _frame;
    private readonly long _keptEnd;
    private readonly StringBuilder _lines = new();
    private readonly SortedDictionary<long, string> _replaced = [];
    private long _last;

    /// <param name="file">The file to be copied.</param>
    /// <param name="owner">Who adds, named in the comment; what the same owner added earlier is cut where it is intact.</param>
    /// <param name="dropped">Instances to be left out.</param>
    public StepAppender(StepFile file, string owner, IEnumerable<long> dropped)
    {
        _file = file;
        _owner = owner;
        _dropped = [.. dropped];
        _frame = StepFrame.Find(file, owner);
        var section = file.DataSections[^1];
        _keptEnd = _frame?.Start ?? section.End;
        while (_keptEnd > section.Start && StepText.IsBlank(file.Bytes(_keptEnd - 1, 1)[0]))
        {
            _keptEnd--;
        }

        _last = LastUsedId();
    }

    /// <summary>Instances left out: those asked for and those cut with an earlier run's.</summary>
    public IReadOnlySet<long> Dropped => _dropped;

    /// <summary>Adds an instance and returns its number.</summary>
    /// <param name="type">Upper-case entity name.</param>
    public long Add(string type, params ReadOnlySpan<StepValue> arguments)
    {
        _last++;
        while (_file.Contains(_last) && !IsCut(_last))
        {
            _last++;
        }

        StepEncoder.Append(_lines, _last, type, arguments);
        _lines.Append('\n');
        return _last;
    }

    /// <summary>Puts an instance in the place of an original one of the same number.</summary>
    /// <param name="type">Upper-case entity name.</param>
    public void Replace(long id, string type, params ReadOnlySpan<StepValue> arguments) =>
        _replaced[id] = StepEncoder.Instance(id, type, arguments);

    /// <summary>Writes the copy.</summary>
    /// <param name="timeStamp">ISO 8601, takes the place of the header's.</param>
    /// <param name="preprocessorVersion">Takes the place of the header's.</param>
    public void Write(Stream output, string timeStamp, string preprocessorVersion)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var copy = new StepCopy(_file, output, hash);
        long at = 0;
        foreach (var (range, text) in Edits(timeStamp, preprocessorVersion).OrderBy(edit => edit.Range.Start))
        {
            copy.Original(at, range.Start);
            copy.Text(text);
            at = range.End;
        }

        copy.Original(at, _keptEnd);
        copy.Text("\n");
        var start = copy.Length;
        foreach (var part in _lines.GetChunks())
        {
            copy.Text(part.Span);
        }

        copy.Text("ENDSEC;\n");
        if (_replaced.Count == 0)
        {
            copy.Text(StepFrame.Comment(_owner, start, copy.Hash()));
        }

        WriteEnd(copy);
    }

    /// <summary>
    /// The number before the first one to be given: the largest in use, or 0 where few are left below 2^31 (common readers
    /// lose larger ones), so that unused lower ones are taken.
    /// </summary>
    private long LastUsedId()
    {
        const long LeastRoom = 10_000_000;
        long largest = _frame is null ? _file.LargestId : 0;
        foreach (var id in _frame is null ? [] : _file.Ids)
        {
            if (IsCut(id))
            {
                _dropped.Add(id);
            }
            else
            {
                largest = Math.Max(largest, id);
            }
        }

        return largest > int.MaxValue - LeastRoom ? 0 : largest;
    }

    /// <summary>Whether an instance goes with an earlier run's frame, so that its number is free again.</summary>
    private bool IsCut(long id) => _frame is not null && _file.StartOf(id) >= _frame.Start;

    private IEnumerable<(StepRange Range, string Text)> Edits(string timeStamp, string preprocessorVersion)
    {
        if (_file.Header.TimeStampRange is { } stamp)
        {
            yield return (stamp, StepString.Encode(timeStamp));
        }

        if (_file.Header.PreprocessorVersionRange is { } version)
        {
            yield return (version, StepString.Encode(preprocessorVersion));
        }

        foreach (var range in _dropped.Where(_file.Contains).Select(_file.RangeOf).Where(range => range.Start < _keptEnd))
        {
            yield return (range with { End = EndOfLine(range.End) }, string.Empty);
        }

        foreach (var (id, text) in _replaced)
        {
            if (!_dropped.Contains(id) && _file.RangeOf(id) is var range && range.Start < _keptEnd)
            {
                yield return (range, text);
            }
        }
    }

    /// <summary>Behind the line end that follows an instance, if nothing else follows before it.</summary>
    private long EndOfLine(long end)
    {
        var place = end;
        while (place < _keptEnd)
        {
            var next = _file.Bytes(place, 1)[0];
            place++;
            if (next == '\n' || (next == '\r' && (place == _keptEnd || _file.Bytes(place, 1)[0] != '\n')))
            {
                return place;
            }

            if (!StepText.IsBlank(next))
            {
                return end;
            }
        }

        return end;
    }

    /// <summary>What follows the data; a signature would no longer be true and is left out.</summary>
    private void WriteEnd(StepCopy copy)
    {
        var start = _frame?.End ?? _file.EndOfData;
        var end = Math.Min(_file.SignatureStart ?? long.MaxValue, _file.Size);
        copy.Original(start, end);
        if (_file.End is null || _file.End > end)
        {
            copy.Text("END-ISO-10303-21;\n");
        }
    }
}
