using System.Collections.Immutable;
using IfcCourser.Findings;

namespace IfcCourser.Step21;

/// <summary>
/// A file in the clear text encoding of ISO 10303-21: every instance is indexed on opening, none is parsed before it is
/// asked for. Safe for several threads until it is disposed.
/// </summary>
public sealed class StepFile : IDisposable
{
    private readonly StepBytes _bytes;
    private readonly StepIndex _index;
    private readonly Lock _lock = new();
    private readonly SortedDictionary<long, StepDefect> _defects = [];

    private StepFile(string name, StepBytes bytes, StepIndexer indexer)
    {
        Name = name;
        _bytes = bytes;
        _index = indexer.Index;
        Header = indexer.Header;
        DataSections = indexer.DataSections;
        SignatureStart = indexer.SignatureStart;
        End = indexer.End;
        foreach (var defect in indexer.Defects)
        {
            _defects[defect.Offset] = defect;
        }

        foreach (var slot in _index.Superseded)
        {
            var offset = _index.OffsetOf(slot);
            _defects[offset] = new StepDefect(
                offset, _index.IdOf(slot), "the instance number is defined again further on; the last definition counts", "Export the model again.");
        }
    }

    /// <summary>The path or name it was opened by.</summary>
    public string Name { get; }

    public StepHeader Header { get; }

    /// <summary>Instances that can be read; of those with the same number one counts.</summary>
    public int Count => _index.Count - _index.Superseded.Count;

    /// <summary>The largest instance number; 0 in a file without instances.</summary>
    public long LargestId => _index.LargestId;

    /// <summary>Instance numbers in file order; those defined twice stand twice.</summary>
    public IEnumerable<long> Ids => Enumerable.Range(0, _index.Count).Select(_index.IdOf);

    /// <summary>Size in bytes.</summary>
    public long Size => _bytes.Length;

    /// <summary>
    /// Instances skipped because they are malformed or defined again, in file order. Those whose values can't be parsed
    /// join when they are first asked for.
    /// </summary>
    public ImmutableArray<Fault> Faults
    {
        get
        {
            lock (_lock)
            {
                var lines = new StepLines(_bytes);
                return [.. _defects.Values.Select(defect => ToFault(Name, lines, defect))];
            }
        }
    }

    /// <summary>From behind <c>DATA;</c> to the section's <c>ENDSEC</c>.</summary>
    internal ImmutableArray<StepRange> DataSections { get; }

    /// <summary>Whether the file carries a digital signature, which no changed copy can keep.</summary>
    public bool HasSignature => SignatureStart is not null;

    /// <summary>Behind the <c>ENDSEC;</c> of the last DATA section, with whatever else stands before the semicolon.</summary>
    internal long EndOfData
    {
        get
        {
            var end = DataSections[^1].End;
            return end + StepText.EndOfStatement(_bytes.From(end), 0);
        }
    }

    /// <summary>Where a SIGNATURE section starts.</summary>
    internal long? SignatureStart { get; }

    /// <summary>Behind <c>END-ISO-10303-21;</c>; null where it is missing.</summary>
    internal long? End { get; }

    /// <summary>Reads a file, or maps it where it is large, and indexes it.</summary>
    public static Outcome<StepFile> Open(string path)
    {
        var bytes = StepBytes.Open(path);
        return bytes.IsOk ? Index(path, bytes.Value) : bytes.Fault;
    }

    /// <summary>Indexes bytes in memory, which must not change while the file is in use.</summary>
    /// <param name="name">What faults call it.</param>
    public static Outcome<StepFile> Read(string name, ReadOnlyMemory<byte> bytes)
    {
        if (bytes.IsEmpty)
        {
            return new Fault(name, null, null, "the file is empty", "Export the model again.");
        }

        return Index(name, StepBytes.Of(bytes));
    }

    /// <summary>Ids of all instances of exactly this type (upper-case), in file order; complex instances are in none.</summary>
    public IReadOnlyList<long> InstancesOf(string type)
    {
        var number = _index.Types.Find(type);
        return number < 0 ? [] : _index.OfType(number);
    }

    public bool Contains(long id) => _index.Find(id) >= 0;

    /// <summary>Upper-case entity name; empty for a complex instance, null where there is no such instance.</summary>
    public string? TypeOf(long id)
    {
        var slot = _index.Find(id);
        return slot < 0 ? null : _index.Types.NameOf(_index.TypeOf(slot));
    }

    /// <summary>Parses an instance; null where there is none or it is malformed, which <see cref="Faults"/> then tells.</summary>
    public StepInstance? Find(long id)
    {
        var slot = _index.Find(id);
        return slot < 0 ? null : Parse(slot);
    }

    /// <summary>The instance's text in the file, from # to the semicolon; empty where there is none.</summary>
    public ReadOnlySpan<byte> TextOf(long id)
    {
        var slot = _index.Find(id);
        return slot < 0 ? [] : Text(slot);
    }

    /// <summary>What stands from an instance's # on, to its semicolon or beyond: nobody looks for that. Empty where there is no such instance.</summary>
    /// <param name="most">Bytes; fewer at the end of the file.</param>
    public ReadOnlySpan<byte> HeadOf(long id, int most)
    {
        var slot = _index.Find(id);
        var offset = slot < 0 ? Size : _index.OffsetOf(slot);
        return _bytes.Slice(offset, (int)Math.Min(most, Size - offset));
    }

    public void Dispose() => _bytes.Dispose();

    internal ReadOnlySpan<byte> Bytes(long offset, int length) => _bytes.Slice(offset, length);

    /// <summary>Where an instance's text starts.</summary>
    internal long StartOf(long id) => _index.OffsetOf(_index.Find(id));

    /// <summary>Where an instance's text stands.</summary>
    internal StepRange RangeOf(long id)
    {
        var slot = _index.Find(id);
        return new StepRange(_index.OffsetOf(slot), _index.OffsetOf(slot) + Text(slot).Length);
    }

    private static Outcome<StepFile> Index(string name, StepBytes bytes)
    {
        var indexer = new StepIndexer(bytes);
        if (indexer.Run() is not { } defect)
        {
            return new StepFile(name, bytes, indexer);
        }

        var fault = ToFault(name, new StepLines(bytes), defect);
        bytes.Dispose();
        return fault;
    }

    private static Fault ToFault(string name, StepLines lines, StepDefect defect) =>
        new(name, lines.Of(defect.Offset), defect.Id, defect.What, defect.Remedy);

    /// <summary>From # to the semicolon, which is looked for again: a table of lengths would be a quarter of the index.</summary>
    private ReadOnlySpan<byte> Text(int slot)
    {
        var text = _bytes.From(_index.OffsetOf(slot));
        return text[..StepText.EndOfStatement(text, 0)];
    }

    private StepInstance? Parse(int slot)
    {
        var id = _index.IdOf(slot);
        var text = Text(slot);
        var type = _index.TypeOf(slot);
        var parser = new StepParser(text, StartOfValues(text));
        var instance = type == StepTypeTable.Complex
            ? parser.Parts() is { } parts ? new StepInstance(id, string.Empty, []) { Parts = parts } : null
            : parser.List() is { } values ? new StepInstance(id, _index.Types.NameOf(type), values) : null;
        if (instance is null || StepText.At(text, parser.At) != ';')
        {
            Record(slot, parser.Problem ?? "there is something between the parameters and the semicolon");
            return null;
        }

        return instance;
    }

    /// <summary>The opening parenthesis behind the number, the equals sign and the name, if any.</summary>
    private static int StartOfValues(ReadOnlySpan<byte> text)
    {
        var i = 1;
        while (StepText.IsDigit(text[i]))
        {
            i++;
        }

        i = StepText.SkipBlanks(text, StepText.SkipBlanks(text, i) + 1);
        while (text[i] == '!' || StepText.NameBytes.Contains(text[i]))
        {
            i++;
        }

        return StepText.SkipBlanks(text, i);
    }

    private void Record(int slot, string problem)
    {
        var offset = _index.OffsetOf(slot);
        lock (_lock)
        {
            _defects[offset] = new StepDefect(
                offset, _index.IdOf(slot), $"the instance was skipped: {problem}", "Correct the file or export it again.");
        }
    }
}
