using System.Buffers;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>One pass over a file: finds sections, header statements and every instance, and what is wrong with them.</summary>
internal sealed class StepIndexer
{
    private static readonly SearchValues<byte> _instanceStops = SearchValues.Create(";'/="u8);

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
            var name = Keyword(text);
            if (name is "SIGNATURE")
            {
                // Always last: behind the data in older files, behind the end mark since 2016.
                SignatureStart = _at;
                break;
            }

            var isClosed = EndStatement(text) && name switch
            {
                "HEADER" => ReadHeader(),
                "DATA" => ReadData(),
                "ANCHOR" or "REFERENCE" => SkipSection(),
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

    private static string Keyword(ReadOnlySpan<byte> text)
    {
        var end = 0;
        while (StepText.NameBytes.Contains(StepText.At(text, end)))
        {
            end++;
        }

        return Encoding.ASCII.GetString(text[..end]).ToUpperInvariant();
    }

    /// <summary>The place behind the number; the number is -1 where there is none or it is too large.</summary>
    private static int ReadId(ReadOnlySpan<byte> text, out long id)
    {
        // No number of so many digits overflows.
        const int SafeDigits = 18;
        id = 0;
        var i = 1;
        for (; (uint)i < (uint)text.Length && char.IsAsciiDigit((char)text[i]) && i <= SafeDigits; i++)
        {
            id = unchecked((id * 10) + (text[i] - '0'));
        }

        for (; id >= 0 && StepText.IsDigit(StepText.At(text, i)); i++)
        {
            var digit = text[i] - '0';
            id = id <= (long.MaxValue - digit) / 10 ? (id * 10) + digit : -1;
        }

        id = i == 1 ? -1 : id;
        return i;
    }

    private StepDefect? Start()
    {
        if (_bytes.From(0).StartsWith("\uFEFF"u8))
        {
            _at = 3;
        }

        var text = NextStatement();
        if (text.Length >= 12 && Keyword(text) is "ISO-10303-21")
        {
            _at += 12;
            _at += _bytes.From(_at).StartsWith(";"u8) ? 1 : 0;
            return null;
        }

        var isZip = text.StartsWith("PK\u0003\u0004"u8);
        var isXml = text.StartsWith("<"u8);
        var what = isZip ? "this is a zip archive" : isXml ? "this is XML" : "this is no STEP file: it does not start with ISO-10303-21";
        var remedy = isZip ? "Give it the ending .ifczip." : "Export the model as IFC in STEP form (.ifc).";
        return new StepDefect(_at, null, what, remedy);
    }

    private StepDefect CutOff()
    {
        long? last = Index.Ids.IsEmpty ? null : Index.Ids[^1];
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
        for (var i = 0; ;)
        {
            var length = text[i..].IndexOfAny((byte)';', (byte)'\'', (byte)'/');
            if (length < 0)
            {
                return false;
            }

            i += length;
            if (text[i] == ';')
            {
                _at += i + 1;
                return true;
            }

            var isComment = text[i] == '/' && StepText.At(text, i + 1) == '*';
            i = text[i] == '\'' ? StepText.EndOfString(text, i + 1) : isComment ? StepText.EndOfComment(text, i) : i + 1;
            i = i < -1 ? ~i : i;
            if (i < 0)
            {
                return false;
            }
        }
    }

    private bool ReadHeader()
    {
        while (NextStatement() is { IsEmpty: false } text)
        {
            var name = Keyword(text);
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
            var isEnd = Keyword(text) is "ENDSEC";
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

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool ReadData()
    {
        var start = _at;
        while (NextStatement() is { IsEmpty: false } text)
        {
            if (text[0] == '#')
            {
                if (!ReadInstance(text))
                {
                    return false;
                }

                continue;
            }

            var end = _at;
            var isEnd = StepText.IsLetter(text[0]) && Keyword(text) is "ENDSEC";
            if (!EndStatement(text))
            {
                return false;
            }

            if (isEnd)
            {
                _dataSections.Add(new StepRange(start, end));
                return true;
            }

            if (text[0] != ';')
            {
                _defects.Add(new StepDefect(end, null, "something that is no instance was skipped", "Export the model again."));
            }
        }

        return false;
    }

    /// <summary>Indexes the instance whose # is the text's first byte; false where the file ends in it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool ReadInstance(ReadOnlySpan<byte> text)
    {
        var i = ReadId(text, out var id);
        if (id < 0)
        {
            return Skip(text, null, i == 1 ? "an instance has no number" : "an instance number is larger than 2^63", i);
        }

        i = StepText.SkipBlanks(text, i);
        if (StepText.At(text, i) != '=')
        {
            return Skip(text, id, "there is no = behind the instance number", i);
        }

        i = StepText.SkipBlanks(text, i + 1);
        var type = ReadType(text, ref i);
        return type < 0 ? Skip(text, id, "there is no entity name", i) : FindEnd(text, i, id, type);
    }

    /// <summary>The type's number, with <paramref name="i"/> moved on to the opening parenthesis; negative where there is none.</summary>
    private int ReadType(ReadOnlySpan<byte> text, ref int i)
    {
        const int LongestName = 64;
        var length = text.Slice(i, Math.Min(LongestName, text.Length - i)).IndexOf((byte)'(');
        if (length == 0)
        {
            return StepTypeTable.Complex;
        }

        var type = length < 0 ? -1 : Index.Types.Intern(text.Slice(i, length));
        if (type >= 0)
        {
            i += length;
            return type;
        }

        // Blanks or a comment between the name and the parenthesis, or no name at all.
        var start = i;
        while (StepText.NameBytes.Contains(StepText.At(text, i)) || (i == start && StepText.At(text, i) == '!'))
        {
            i++;
        }

        var name = text[start..i];
        i = StepText.SkipBlanks(text, i);
        return StepText.At(text, i) == '(' ? Index.Types.Intern(name) : -1;
    }

    /// <summary>Finds the semicolon from inside the parameters on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool FindEnd(ReadOnlySpan<byte> text, int i, long id, int type)
    {
        while (true)
        {
            var length = text[i..].IndexOfAny(_instanceStops);
            if (length < 0)
            {
                return false;
            }

            i += length;
            switch (text[i])
            {
                case (byte)';':
                    return Add(text, i, id, type);
                case (byte)'\'':
                    var end = StepText.EndOfString(text, i + 1);
                    if (end == -1)
                    {
                        return false;
                    }

                    if (end < 0)
                    {
                        return Resume(~end, id, "a string has no closing quote");
                    }

                    i = end;
                    break;
                case (byte)'=':
                    return Resume(Math.Max(text[..i].LastIndexOf((byte)'#'), 1), id, "the semicolon is missing");
                default:
                    i = StepText.At(text, i + 1) == '*' ? StepText.EndOfComment(text, i) : i + 1;
                    break;
            }
        }
    }

    private bool Add(ReadOnlySpan<byte> text, int semicolon, long id, int type)
    {
        var last = semicolon - 1;
        while (StepText.IsBlank(text[last]))
        {
            last--;
        }

        if (text[last] is not ((byte)')' or (byte)'/'))
        {
            var word = text[..(last + 1)].LastIndexOf("ENDSEC"u8);
            return Resume(word == last - 5 && word > 0 ? word : semicolon + 1, id, "the closing parenthesis is missing");
        }

        Index.Add(id, _at, semicolon + 1, type);
        _at += semicolon + 1;
        return true;
    }

    /// <summary>Records a broken instance and goes on at a place counted from its start.</summary>
    private bool Resume(int place, long? id, string what)
    {
        _defects.Add(new StepDefect(_at, id, $"the instance was skipped: {what}", "Correct the file or export it again."));
        _at += place;
        return true;
    }

    private bool Skip(ReadOnlySpan<byte> text, long? id, string what, int from)
    {
        var next = text[from..].IndexOf((byte)';');
        return next >= 0 && Resume(from + next + 1, id, what);
    }
}
