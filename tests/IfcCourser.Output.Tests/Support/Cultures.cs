using System.Globalization;

namespace IfcCourser.Output.Tests.Support;

/// <summary>Runs the same work under cultures with other decimal signs, digits and calendars.</summary>
internal static class Cultures
{
    public static IReadOnlyList<T> Each<T>(Func<T> work)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            return [.. new[] { "", "de-DE", "ar-SA", "tr-TR", "fa-IR" }.Select(name =>
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
                return work();
            })];
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
