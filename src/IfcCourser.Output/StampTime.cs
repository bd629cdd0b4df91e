using System.Globalization;

namespace IfcCourser.Output;

/// <summary>The date stamped on what is written, as xs:dateTime; without a zone it counts as UTC (BCF 3.0, documentation, DateTime Format).</summary>
internal static class StampTime
{
    /// <summary>Where a model's own stamp is no date: the first that a zip entry can bear.</summary>
    private static readonly DateTime _none = new(1980, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>A date, perhaps with time and zone, in UTC.</summary>
    public static DateTime Of(string text) =>
        DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time) ? time.UtcDateTime : _none;

    public static string Text(DateTime time) => time.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
