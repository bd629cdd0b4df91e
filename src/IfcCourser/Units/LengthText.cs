using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace IfcCourser.Units;

/// <summary>Lengths as people write them: <c>24 in</c>, <c>7 7/8 in</c>, <c>5'-4 1/2"</c>, <c>624 mm</c>, <c>1.5 m</c>.</summary>
public static partial class LengthText
{
    private const string Number = @"(?:\d{1,9}[ -])?\d{1,9}/0*[1-9]\d{0,8}|\d{1,9}(?:\.\d{1,9})?";

    private const string Inch = "in(?:ch(?:es)?)?|\"|″";

    /// <summary>
    /// Reads a length with its unit; fractions and decimals are exact, then rounded once to a whole nanometre.
    /// </summary>
    /// <param name="text">What was written.</param>
    /// <param name="length">The length, where it could be read.</param>
    /// <param name="problem">What is wrong, a clause without a full stop, where it could not.</param>
    public static bool TryParse(string text, out Length length, [NotNullWhen(false)] out string? problem)
    {
        length = default;
        problem = null;
        var match = Pattern().Match(text.Trim());
        if (!match.Success)
        {
            problem = BareNumber().IsMatch(text)
                ? $"the length \"{text}\" has no unit; write it as 24 in, 5 ft 4 1/2 in or 610 mm"
                : $"\"{text}\" is no length; write it as 24 in, 7 7/8 in, 5 ft 4 1/2 in, 624 mm or 1.5 m";
            return false;
        }

        var nanometres = Nanometres(match.Groups["feet"], 12 * Length.NanometresPerInch)
            + Nanometres(match.Groups["inches"], Length.NanometresPerInch)
            + Nanometres(match.Groups["mm"], Length.NanometresPerMm)
            + Nanometres(match.Groups["cm"], 10 * Length.NanometresPerMm)
            + Nanometres(match.Groups["m"], 1000 * Length.NanometresPerMm);
        var rounded = decimal.Round(nanometres, MidpointRounding.AwayFromZero);
        if (rounded > long.MaxValue / 1000)
        {
            problem = $"the length \"{text}\" is too large for a building";
            return false;
        }

        length = new Length(match.Groups["minus"].Success ? -(long)rounded : (long)rounded);
        return true;
    }

    /// <summary>
    /// The figure drawings print: millimetres with at most one decimal and no unit, or feet and inches to the nearest
    /// sixteenth, such as <c>8'-0 3/8"</c> and, under a foot, <c>7 7/8"</c>. Halves round away from zero.
    /// </summary>
    public static string Format(Length length, UnitSystem units) =>
        units is UnitSystem.Inch ? FeetAndInches(length) : Millimetres(length);

    /// <summary>As <see cref="Format"/>, with the unit named: for messages and tables.</summary>
    public static string WithUnit(Length length, UnitSystem units) =>
        units is UnitSystem.Inch ? FeetAndInches(length) : Millimetres(length) + " mm";

    private static string Millimetres(Length length)
    {
        var rounded = decimal.Round(length.Nanometres / (decimal)Length.NanometresPerMm, 1, MidpointRounding.AwayFromZero);
        return rounded.ToString("0.#", CultureInfo.InvariantCulture);
    }

    private static string FeetAndInches(Length length)
    {
        const long Sixteenth = Length.NanometresPerInch / 16;
        var sixteenths = (Length.Abs(length).Nanometres + (Sixteenth / 2)) / Sixteenth;
        var (feet, rest) = Math.DivRem(sixteenths, 12 * 16);
        var (inches, parts) = Math.DivRem(rest, 16);

        var text = new StringBuilder();
        if (length < Length.Zero && sixteenths > 0)
        {
            text.Append('-');
        }

        if (feet > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"{feet}'-");
        }

        if (inches > 0 || feet > 0 || parts == 0)
        {
            text.Append(inches);
        }

        if (parts > 0)
        {
            var divisor = parts % 8 == 0 ? 8 : parts % 4 == 0 ? 4 : parts % 2 == 0 ? 2 : 1;
            text.Append(inches > 0 || feet > 0 ? " " : string.Empty);
            text.Append(CultureInfo.InvariantCulture, $"{parts / divisor}/{16 / divisor}");
        }

        return text.Append('"').ToString();
    }

    private static decimal Nanometres(Group number, long unit)
    {
        if (!number.Success)
        {
            return 0;
        }

        var words = number.Value.Split([' ', '-']);
        var fraction = words[^1].Split('/');
        var whole = words.Length > 1 ? Parsed(words[0]) * unit : 0;
        return whole + (fraction.Length > 1 ? Parsed(fraction[0]) * unit / Parsed(fraction[1]) : Parsed(fraction[0]) * unit);
    }

    private static decimal Parsed(string digits) => decimal.Parse(digits, CultureInfo.InvariantCulture);

    // Not backtracking: a time limit would make the answer depend on how busy the machine is.
    [GeneratedRegex(
        "^(?<minus>-)?(?:(?<feet>" + Number + @")\s*(?:ft|foot|feet|'|′)(?:\s*-?\s*(?<inches>" + Number + @")\s*(?:" + Inch + "))?" +
        "|(?<inches>" + Number + @")\s*(?:" + Inch + ")" +
        "|(?<mm>" + Number + @")\s*mm|(?<cm>" + Number + @")\s*cm|(?<m>" + Number + @")\s*m)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Pattern();

    [GeneratedRegex(@"^\s*-?(" + Number + @")\s*$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex BareNumber();
}
