using System.Buffers;
using System.Runtime.CompilerServices;

namespace IfcCourser.Step21;

/// <summary>Indexes the instances of one DATA section; what is malformed is recorded and skipped up to the next instance.</summary>
internal ref struct StepDataReader
{
    /// <summary>One span reaches 2 GB; it is moved on long before, for a mapped file to be given back bit by bit.</summary>
    private const int Stride = 1 << 26;

    private static readonly SearchValues<byte> _stops = SearchValues.Create(";'/="u8);

    private readonly StepBytes _bytes;
    private readonly StepIndex _index;
    private readonly List<StepDefect> _defects;
    private ReadOnlySpan<byte> _text;
    private long _start;
    private int _at;

    /// <param name="start">Behind <c>DATA;</c>.</param>
    public StepDataReader(StepBytes bytes, long start, StepIndex index, List<StepDefect> defects)
    {
        _bytes = bytes;
        _index = index;
        _defects = defects;
        _start = start;
        _text = bytes.From(start);
    }

    /// <summary>The next byte to be read, in the file.</summary>
    public readonly long Offset => _start + _at;

    /// <summary>Reads up to ENDSEC; false where the file ends before it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Read()
    {
        while (true)
        {
            _at = StepText.SkipBlanks(_text, _at);
            if (_at >= Stride)
            {
                _bytes.Passed();
                _start += _at;
                _at = 0;
                _text = _bytes.From(_start);
            }

            if (_at == _text.Length)
            {
                return false;
            }

            if (_text[_at] == '#')
            {
                if (!ReadInstance())
                {
                    return false;
                }
            }
            else if (StepText.IsLetter(_text[_at]) && StepText.Keyword(_text[_at..]) is "ENDSEC")
            {
                return true;
            }
            else if (!SkipStatement())
            {
                return false;
            }
        }
    }

    /// <summary>The place behind the digits; the number is -1 where there is none or it is too large.</summary>
    private static int ReadId(ReadOnlySpan<byte> text, int start, out long id)
    {
        // No number of so many digits overflows.
        const int SafeDigits = 18;
        id = 0;
        var i = start;
        var safe = Math.Min(text.Length, start + SafeDigits);
        for (; i < safe && char.IsAsciiDigit((char)text[i]); i++)
        {
            id = unchecked((id * 10) + (text[i] - '0'));
        }

        for (; id >= 0 && StepText.IsDigit(StepText.At(text, i)); i++)
        {
            var digit = text[i] - '0';
            id = id <= (long.MaxValue - digit) / 10 ? (id * 10) + digit : -1;
        }

        id = i == start ? -1 : id;
        return i;
    }

    /// <summary>Indexes the instance whose # is the next byte; false where the file ends in it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool ReadInstance()
    {
        var text = _text;
        var i = ReadId(text, _at + 1, out var id);
        if (id < 0)
        {
            return Skip(null, i == _at + 1 ? "an instance has no number" : "an instance number is larger than 2^63", i);
        }

        i = StepText.SkipBlanks(text, i);
        if (StepText.At(text, i) != '=')
        {
            return Skip(id, "there is no = behind the instance number", i);
        }

        i = StepText.SkipBlanks(text, i + 1);
        var type = ReadType(ref i);
        return type < 0 ? Skip(id, "there is no entity name", i) : FindEnd(i, id, type);
    }

    /// <summary>The type's number, with <paramref name="i"/> moved on to the opening parenthesis; negative where there is none.</summary>
    private readonly int ReadType(ref int i)
    {
        const int LongestName = 64;
        var text = _text;
        var length = text.Slice(i, Math.Min(LongestName, text.Length - i)).IndexOf((byte)'(');
        if (length == 0)
        {
            return StepTypeTable.Complex;
        }

        var type = length < 0 ? -1 : _index.Types.Intern(text.Slice(i, length));
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
        return StepText.At(text, i) == '(' ? _index.Types.Intern(name) : -1;
    }

    /// <summary>Finds the semicolon from inside the parameters on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool FindEnd(int i, long id, int type)
    {
        var text = _text;

        // Behind the last string or comment: a # inside of one starts no instance.
        var clear = i;
        while (true)
        {
            var length = text[i..].IndexOfAny(_stops);
            if (length < 0)
            {
                return false;
            }

            i += length;
            switch (text[i])
            {
                case (byte)';':
                    return Add(i, id, type);
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

                    i = clear = end;
                    break;
                case (byte)'=':
                    var next = text[clear..i].LastIndexOf((byte)'#');
                    return Resume(next < 0 ? i + 1 : clear + next, id, "the semicolon is missing");
                case (byte)'/' when StepText.At(text, i + 1) == '*':
                    i = clear = StepText.EndOfComment(text, i);
                    break;
                default:
                    i++;
                    break;
            }
        }
    }

    private bool Add(int semicolon, long id, int type)
    {
        var last = semicolon - 1;
        while (StepText.IsBlank(_text[last]))
        {
            last--;
        }

        if (_text[last] is not ((byte)')' or (byte)'/'))
        {
            const int LengthOfEnd = 6;
            var isSectionEnd = _text[_at..(last + 1)].EndsWith("ENDSEC"u8);
            return Resume(isSectionEnd ? last + 1 - LengthOfEnd : semicolon + 1, id, "the closing parenthesis is missing");
        }

        _index.Add(id, Offset, type);
        _at = semicolon + 1;
        return true;
    }

    private bool SkipStatement()
    {
        var end = StepText.EndOfStatement(_text, _at);
        if (end < 0)
        {
            return false;
        }

        if (_text[_at] != ';')
        {
            _defects.Add(new StepDefect(Offset, null, "something that is no instance was skipped", "Export the model again."));
        }

        _at = end;
        return true;
    }

    /// <summary>Records a broken instance and goes on at a place behind its start.</summary>
    private bool Resume(int place, long? id, string what)
    {
        _defects.Add(new StepDefect(Offset, id, $"the instance was skipped: {what}", "Correct the file or export it again."));
        _at = place;
        return true;
    }

    private bool Skip(long? id, string what, int from)
    {
        var next = _text[from..].IndexOf((byte)';');
        return next >= 0 && Resume(from + next + 1, id, what);
    }
}
