using System.Collections.Immutable;

namespace IfcCourser.Step21;

/// <summary>One pass over a file: finds sections, header statements and every instance, and what is wrong with them.</summary>
internal sealed class StepIndexer
{
    private readonly StepBytes _bytes;
    private readonly List<StepRange> _dataSections = [];
    private readonly List<StepDefect> _defects = [];
    private long _at;

    public StepIndexer(StepBytes bytes)
    {
        _bytes = bytes;
        Index = new StepIndex(bytes.Length);
    }

    public StepIndex Index { get; }

    public StepHeader Header { get; private set; } = new();

    /// <summary>From behind <c>DATA;</c> to <c>ENDSEC</c>, in file order.</summary>
    public ImmutableArray<StepRange> DataSections => [.. _dataSections];

    /// <summary>Behind <c>END-ISO-10303-21;</c>; null where it is missing.</summary>
    public long? End { get; private set; }

    /// <summary>Where the SIGNATURE section starts; null where there is none.</summary>
    public long? SignatureStart { get; private set; }

    /// <summary>What was skipped.</summary>
    public ImmutableArray<StepDefect> Defects => [.. _defects];

    /// <summary>Reads the file; returns what makes it unreadable, or null.</summary>
    public StepDefect? Run()
    {
        if (Start() is { } defect)
        {
            return defect;
        }

        while (NextStatement() is { IsEmpty: false } text)
        {
            var name = StepText.Keyword(text);
            if (name is "SIGNATURE")
            {
                // Always last: behind the data in older files, behind the end mark since 2016.
                SignatureStart = _at;
                break;
            }

            var isClosed = EndStatement(text) && name switch
            {
                // A header stands before the data; what stands behind is none, and must not be written to as one.
                "HEADER" when _dataSections.Count == 0 => ReadHeader(),
                "DATA" => ReadData(),
                "HEADER" or "ANCHOR" or "REFERENCE" => SkipSection(),
                _ => true,
            };
            if (!isClosed)
            {
                if (End is null)
                {
                    return CutOff();
                }

                break;
            }

            End = name is "END-ISO-10303-21" ? _at : End;
        }

        Index.Seal();
        return _dataSections.Count > 0
            ? null
            : new StepDefect(_at, null, "the file has no DATA section", "Export the model again.");
    }

    private StepDefect? Start()
    {
        if (_bytes.From(0).StartsWith("\uFEFF"u8))
        {
            _at = 3;
        }

        var text = NextStatement();
        const string Mark = "ISO-10303-21";
        if (StepText.Keyword(text) is Mark)
        {
            _at += Mark.Length;
            return null;
        }

        if (IsTwoBytesEach(_bytes.From(0)))
        {
            return new StepDefect(
                _at, null, "this is text in UTF-16, two bytes for each character; STEP files have one", "Export the model again, or save it as UTF-8 in a text editor.");
        }

        var isZip = text.StartsWith("PK\u0003\u0004"u8);
        var isXml = text.StartsWith("<"u8);
        var what = isZip ? "this is a zip archive" : isXml ? "this is XML" : "this is no STEP file: it does not start with ISO-10303-21";
        var remedy = isZip ? "Give it the ending .ifczip." : "Export the model as IFC in STEP form (.ifc).";
        return new StepDefect(_at, null, what, remedy);
    }

    /// <summary>Whether a text starts with a byte-order mark of UTF-16, or with its first two letters in UTF-16 of either order.</summary>
    private static bool IsTwoBytesEach(ReadOnlySpan<byte> text) =>
        text.StartsWith<byte>([0xFF, 0xFE]) || text.StartsWith<byte>([0xFE, 0xFF]) || text.StartsWith("I\0S\0"u8) || text.StartsWith("\0I\0S"u8);

    private StepDefect CutOff()
    {
        long? last = Index.Count == 0 ? null : Index.IdOf(Index.Count - 1);
        return new StepDefect(_bytes.Length, last, "the file is cut off: a section has no ENDSEC", "Copy or export the file again.");
    }

    /// <summary>The text from the next thing on that is neither blank nor comment; empty at the end of the file.</summary>
    private ReadOnlySpan<byte> NextStatement()
    {
        var text = _bytes.From(_at);
        var skipped = StepText.SkipBlanks(text, 0);
        _at += skipped;
        return text[skipped..];
    }

    /// <summary>Goes behind the semicolon; false where there is none.</summary>
    private bool EndStatement(ReadOnlySpan<byte> text)
    {
        var end = StepText.EndOfStatement(text, 0);
        _at += Math.Max(end, 0);
        return end >= 0;
    }

    private bool ReadHeader()
    {
        while (NextStatement() is { IsEmpty: false } text)
        {
            var name = StepText.Keyword(text);
            var start = _at;
            if (!EndStatement(text))
            {
                return false;
            }

            if (name is "ENDSEC")
            {
                return true;
            }

            var open = StepText.SkipBlanks(text, name.Length);
            if (StepText.At(text, open) == '(')
            {
                Header = Header.With(name, text[open..(int)(_at - start)], start + open);
            }
        }

        return false;
    }

    private bool SkipSection()
    {
        while (NextStatement() is { IsEmpty: false } text)
        {
            var isEnd = StepText.Keyword(text) is "ENDSEC";
            if (!EndStatement(text))
            {
                return false;
            }

            if (isEnd)
            {
                return true;
            }
        }

        return false;
    }

    private bool ReadData()
    {
        var reader = new StepDataReader(_bytes, _at, Index, _defects);
        var isClosed = reader.Read();
        if (isClosed)
        {
            _dataSections.Add(new StepRange(_at, reader.Offset));
        }

        _at = reader.Offset;
        return isClosed && EndStatement(NextStatement());
    }
}
