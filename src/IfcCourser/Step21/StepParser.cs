using System.Collections.Immutable;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>Reads the values of one instance; after a failure <see cref="Problem"/> says what is wrong.</summary>
internal ref struct StepParser
{
    /// <summary>Lists and typed values nested deeper than this are refused; no schema needs more than a handful.</summary>
    private const int DeepestNesting = 100;

    private const int MostKept = 4096;

    /// <summary>Values of the lists that are open, one list behind the other; the thread's own, for a list's length is known at its end only.</summary>
    [ThreadStatic]
    private static StepValue[]? _stack;

    private readonly ReadOnlySpan<byte> _text;
    private StepValue[] _open;
    private int _count;
    private int _depth;

    public StepParser(ReadOnlySpan<byte> text, int at)
    {
        const int Usual = 64;
        _text = text;
        _open = _stack ??= new StepValue[Usual];
        At = StepText.SkipBlanks(text, at);
    }

    /// <summary>The next byte to be read.</summary>
    public int At { get; private set; }

    public string? Problem { get; private set; }

    private readonly byte Next => StepText.At(_text, At);

    /// <summary>The parts of a complex instance, parentheses around them included.</summary>
    public ImmutableArray<StepPart>? Parts()
    {
        if (!Take('('))
        {
            return null;
        }

        var parts = ImmutableArray.CreateBuilder<StepPart>();
        while (Next != ')')
        {
            var name = Name();
            if (name is null || List() is not { } arguments)
            {
                Problem ??= "a part of the complex instance has no name";
                return null;
            }

            parts.Add(new StepPart(name, arguments));
        }

        Take(')');
        return parts.DrainToImmutable();
    }

    /// <summary>Values in parentheses.</summary>
    public ImmutableArray<StepValue>? List()
    {
        if (!Take('('))
        {
            return null;
        }

        if (Next == ')')
        {
            Take(')');
            return [];
        }

        var start = _count;
        while (true)
        {
            Push(Value());
            if (Problem is not null)
            {
                return null;
            }

            if (Next == ')')
            {
                Take(')');
                var values = _open.AsSpan(start, _count - start).ToImmutableArray();
                _count = start;
                return values;
            }

            if (!Take(','))
            {
                return null;
            }
        }
    }

    private void Push(StepValue value)
    {
        if (_count == _open.Length)
        {
            Array.Resize(ref _open, 2 * _open.Length);
            // Not one of unusual length, which would be kept for as long as the thread lives.
            _stack = _open.Length <= MostKept ? _open : _stack;
        }

        _open[_count++] = value;
    }

    /// <summary>One value; <c>$</c> after a failure.</summary>
    public StepValue Value()
    {
        var value = Next switch
        {
            (byte)'$' => Single(StepValue.Omitted),
            (byte)'*' => Single(StepValue.Derived),
            (byte)'\'' => Text(),
            (byte)'"' => StepValue.Binary(Encoding.ASCII.GetString(Until('"'))),
            (byte)'.' when !StepText.IsDigit(StepText.At(_text, At + 1)) => StepValue.Enumeration(StepWords.Upper(Until('.'))),
            (byte)'#' => Reference(),
            (byte)'(' => Nested(),
            var b when StepText.IsLetter(b) || b == '!' => Typed(),
            (byte)',' or (byte)')' => StepValue.Omitted,
            _ => Number(),
        };
        At = StepText.SkipBlanks(_text, At);
        return value;
    }

    private StepValue Single(StepValue value)
    {
        At++;
        return value;
    }

    private StepValue Text()
    {
        var end = At;
        do
        {
            end = StepText.EndOfString(_text, end + 1);
        }
        while (end > 0 && StepText.At(_text, end) == '\'');

        if (end < 0)
        {
            return Fail("a string has no closing quote");
        }

        var raw = _text[(At + 1)..(end - 1)];
        At = end;
        return StepValue.String(StepString.Decode(raw));
    }

    /// <summary>The text up to the next such delimiter; both delimiters are passed.</summary>
    private ReadOnlySpan<byte> Until(char delimiter)
    {
        var length = _text[(At + 1)..].IndexOf((byte)delimiter);
        if (length < 0)
        {
            Fail($"a value has no closing {delimiter}");
            return [];
        }

        var content = _text.Slice(At + 1, length);
        At += length + 2;
        return content;
    }

    private StepValue Reference()
    {
        var start = At + 1;
        At = start;
        var id = StepReal.Decode(Digits()).AsInteger;
        return At > start && id is { } value ? StepValue.Reference(value) : Fail("a reference has no instance number");
    }

    private ReadOnlySpan<byte> Digits()
    {
        var start = At;
        while (StepText.IsDigit(Next))
        {
            At++;
        }

        return _text[start..At];
    }

    private StepValue Nested()
    {
        if (_depth >= DeepestNesting)
        {
            return Fail("lists are nested too deep");
        }

        _depth++;
        var items = List();
        _depth--;
        return items is { } list ? StepValue.List(list) : StepValue.Omitted;
    }

    private StepValue Typed()
    {
        var name = Name()!;
        if (Next != '(')
        {
            // A word such as NaN, written by faulty exporters in place of a number.
            return StepValue.Real(double.NaN);
        }

        var items = Nested().AsList;
        return StepValue.Typed(name, items.IsEmpty ? StepValue.Omitted : items[0]);
    }

    private StepValue Number()
    {
        var length = _text[At..].IndexOfAny((byte)',', (byte)')', (byte)';');
        var text = length < 0 ? _text[At..] : _text.Slice(At, length);
        if (text.IsEmpty)
        {
            return Fail("a value is missing");
        }

        At += text.Length;
        var comment = text.IndexOf("/*"u8);
        return StepReal.Decode((comment < 0 ? text : text[..comment]).Trim(" \t\r\n"u8));
    }

    private string? Name()
    {
        var start = At;
        if (Next == '!')
        {
            At++;
        }

        while (StepText.NameBytes.Contains(Next))
        {
            At++;
        }

        var name = At == start ? null : StepWords.Upper(_text[start..At]);
        At = StepText.SkipBlanks(_text, At);
        return name;
    }

    private bool Take(char expected)
    {
        if (Next != expected)
        {
            Fail(FormattableString.Invariant($"'{expected}' is missing"));
            return false;
        }

        At = StepText.SkipBlanks(_text, At + 1);
        return true;
    }

    private StepValue Fail(string problem)
    {
        Problem ??= problem;
        return StepValue.Omitted;
    }
}
