namespace IfcCourser.Layouts;

/// <summary>Numbers in words: 1-4, 7, 9-12.</summary>
public static class NumberRanges
{
    public static string Of(IEnumerable<int> numbers)
    {
        var ranges = new List<(int From, int To)>();
        foreach (var number in numbers.Distinct().Order())
        {
            if (ranges.Count > 0 && ranges[^1].To == number - 1)
            {
                ranges[^1] = (ranges[^1].From, number);
            }
            else
            {
                ranges.Add((number, number));
            }
        }

        return string.Join(", ", ranges.Select(Text));
    }

    private static string Text((int From, int To) range) => (range.To - range.From) switch
    {
        0 => FormattableString.Invariant($"{range.From}"),
        1 => FormattableString.Invariant($"{range.From}, {range.To}"),
        _ => FormattableString.Invariant($"{range.From}-{range.To}"),
    };
}
