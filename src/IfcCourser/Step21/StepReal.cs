using System.Globalization;

namespace IfcCourser.Step21;

/// <summary>Real numbers as ISO 10303-21:2016, 6.4.2 writes them: with a decimal point, also before an exponent.</summary>
public static class StepReal
{
    /// <summary>The shortest text that reads back as the same number; the number must be finite.</summary>
    public static string Encode(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), "STEP has no text for infinities and NaN.");
        }

        var text = value.ToString(CultureInfo.InvariantCulture);
        if (text.Contains('.', StringComparison.Ordinal))
        {
            return text;
        }

        var exponent = text.IndexOf('E', StringComparison.Ordinal);
        return exponent < 0 ? text + "." : text.Insert(exponent, ".");
    }

    /// <summary>A number's text as a value: an integer where it has neither point nor exponent and fits 64 bits.</summary>
    internal static StepValue Decode(ReadOnlySpan<byte> text)
    {
        if (long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var integer))
        {
            return StepValue.Integer(integer);
        }

        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return StepValue.Real(double.TryParse(text, Style, CultureInfo.InvariantCulture, out var real) ? real : double.NaN);
    }
}
