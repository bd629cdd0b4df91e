using System.Globalization;
using System.Text;

namespace IfcCourser.Output.Pdf;

/// <summary>Numbers and strings as ISO 32000-1, 7.3 writes them.</summary>
internal static class PdfSyntax
{
    private static readonly string[] _days = ["yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd"];

    /// <summary>At most three decimals: micrometres where the unit is the millimetre.</summary>
    public static string Number(double value) => (Math.Round(value, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);

    public static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A reference to an object.</summary>
    public static string Reference(int number) => string.Create(CultureInfo.InvariantCulture, $"{number} 0 R");

    /// <summary>A text string (7.9.2.2): UTF-16BE behind a byte order mark.</summary>
    public static string Text(string text) => $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    /// <summary>A date string (7.9.4) without offset; null where the text is no ISO 8601 date.</summary>
    public static string? Date(string iso) => _days
        .Select(format => DateTime.TryParseExact(
            iso[..Math.Min(iso.Length, format.Length - format.Count(c => c == '\''))], format, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            ? date.ToString("'(D:'yyyyMMddHHmmss')'", CultureInfo.InvariantCulture)
            : null)
        .FirstOrDefault(date => date is not null);
}
