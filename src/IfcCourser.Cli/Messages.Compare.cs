using System.Globalization;
using IfcCourser.Output.Comparisons;

namespace IfcCourser.Cli;

/// <content>What compare says.</content>
internal static partial class Messages
{
    public const string AboutCompare = "Say what changed between two layouts, wall by wall, and which sheets are superseded.";

    public const string ArgumentOlder = "layout.json of the earlier issue.";

    public const string ArgumentNewer = "layout.json of the later issue.";

    public const string NothingChanged = "nothing changed: walls, openings, pieces and bars are as they were";

    public static string TotalsFromTo(string what, int before, int after) => Invariant($"{what}: {before} to {after} ({after - before:+0;-0;0})");

    public const string OptionComparisonPage = "Also write a page of what changed, walls, pieces, order and sheets: one HTML file.";

    public static string Ordered(OrderDifference line) => string.Create(
        CultureInfo.InvariantCulture,
        $"order: {line.What}{(line.Width is { } width ? Invariant($", {width:0.###} wide") : string.Empty)}: {Amount(line.Before)} to {Amount(line.After)} {line.Unit}{(line.After - line.Before is { } more ? Invariant($" ({more:+0.##;-0.##;0})") : string.Empty)}");

    private static string Amount(double? value) => value is { } number ? Invariant($"{number:0.##}") : "unknown";

    public static string Superseded(string number, string? title) => $"superseded: {number} {title}".TrimEnd();
}
