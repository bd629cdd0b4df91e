using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets;

/// <summary>What the openings of a wall are called on its sheets: D1, W1, W2, from left to right.</summary>
internal static class OpeningTags
{
    /// <summary>One for each opening, in their order.</summary>
    public static ImmutableArray<string> Of(ImmutableArray<OpeningLayout> openings)
    {
        var counts = new Dictionary<char, int>();
        return [.. openings.Select(opening =>
        {
            var letter = SheetText.OpeningLetter(opening.Opening.Kind);
            counts[letter] = counts.GetValueOrDefault(letter) + 1;
            return FormattableString.Invariant($"{letter}{counts[letter]}");
        })];
    }
}
