using System.Collections.Immutable;

namespace IfcCourser.Step21;

/// <summary>The header section (ISO 10303-21:2016, clause 8); what a file leaves out is empty.</summary>
public sealed record StepHeader
{
    public ImmutableArray<string> Description { get; init; } = [];

    public string ImplementationLevel { get; init; } = string.Empty;

    public string FileName { get; init; } = string.Empty;

    /// <summary>As written; ISO 8601 in conforming files.</summary>
    public string TimeStamp { get; init; } = string.Empty;

    public ImmutableArray<string> Authors { get; init; } = [];

    public ImmutableArray<string> Organizations { get; init; } = [];

    public string PreprocessorVersion { get; init; } = string.Empty;

    public string OriginatingSystem { get; init; } = string.Empty;

    public string Authorization { get; init; } = string.Empty;

    /// <summary>Schema names as written, such as IFC4X3_ADD2.</summary>
    public ImmutableArray<string> Schemas { get; init; } = [];

    /// <summary>Where the time stamp's value stands, quotes included; null where the file has none.</summary>
    public StepRange? TimeStampRange { get; init; }

    /// <summary>Where the preprocessor version's value stands, quotes included; null where the file has none.</summary>
    public StepRange? PreprocessorVersionRange { get; init; }

    /// <summary>This header with what one of its statements says.</summary>
    /// <param name="name">FILE_DESCRIPTION, FILE_NAME or FILE_SCHEMA; others change nothing.</param>
    /// <param name="text">The file's text from the statement's opening parenthesis on.</param>
    /// <param name="offset">Where that text starts in the file.</param>
    internal StepHeader With(string name, ReadOnlySpan<byte> text, long offset)
    {
        var (values, ranges) = Values(text, offset);
        return name switch
        {
            "FILE_DESCRIPTION" => this with { Description = Strings(values, 0), ImplementationLevel = Text(values, 1) },
            "FILE_NAME" => this with
            {
                FileName = Text(values, 0),
                TimeStamp = Text(values, 1),
                Authors = Strings(values, 2),
                Organizations = Strings(values, 3),
                PreprocessorVersion = Text(values, 4),
                OriginatingSystem = Text(values, 5),
                Authorization = Text(values, 6),
                TimeStampRange = Replaceable(values, ranges, 1),
                PreprocessorVersionRange = Replaceable(values, ranges, 4),
            },
            "FILE_SCHEMA" => this with { Schemas = Strings(values, 0) },
            _ => this,
        };
    }

    private static (List<StepValue> Values, List<StepRange> Ranges) Values(ReadOnlySpan<byte> text, long offset)
    {
        var values = new List<StepValue>();
        var ranges = new List<StepRange>();
        var start = StepText.SkipBlanks(text, 1);
        while (StepText.At(text, start) is not (0 or (byte)')'))
        {
            var parser = new StepParser(text, start);
            var value = parser.Value();
            if (parser.Problem is not null || parser.At == start)
            {
                break;
            }

            values.Add(value);
            ranges.Add(new StepRange(offset + start, offset + EndOfValue(text, start, parser.At)));
            start = StepText.At(text, parser.At) == ',' ? StepText.SkipBlanks(text, parser.At + 1) : text.Length;
        }

        return (values, ranges);
    }

    /// <summary>Where a string or nothing stands; null where it is anything else: taking that away could open or close a quote.</summary>
    private static StepRange? Replaceable(List<StepValue> values, List<StepRange> ranges, int place) =>
        place < values.Count && values[place].Kind is (StepValueKind.String or StepValueKind.Omitted or StepValueKind.Derived) ? ranges[place] : null;

    /// <summary>The place behind a string's closing quote, without the blanks and comments that follow.</summary>
    private static int EndOfValue(ReadOnlySpan<byte> text, int start, int end)
    {
        if (text[start] != '\'')
        {
            return text[start] is (byte)'$' or (byte)'*' ? start + 1 : end;
        }

        var place = start;
        do
        {
            place = StepText.EndOfString(text, place + 1);
        }
        while (place > 0 && StepText.At(text, place) == '\'');
        return place < 0 ? end : place;
    }

    private static string Text(List<StepValue> values, int place) =>
        (place < values.Count ? values[place].AsString : null) ?? string.Empty;

    private static ImmutableArray<string> Strings(List<StepValue> values, int place)
    {
        if (place >= values.Count)
        {
            return [];
        }

        var items = values[place].AsString is { } single ? [StepValue.String(single)] : values[place].AsList;
        return [.. items.Select(item => item.AsString).OfType<string>()];
    }
}
