using System.Globalization;

namespace IfcCourser.Output.Ordering;

/// <summary>Numbers of the order's CSV files.</summary>
internal static class CsvNumber
{
    /// <param name="decimals">Four at most; noughts at the end are left out.</param>
    public static string Of(double value, int decimals) => (Math.Round(value, decimals) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);
}
