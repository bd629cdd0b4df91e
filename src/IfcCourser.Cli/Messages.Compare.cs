namespace IfcCourser.Cli;

/// <content>What compare says.</content>
internal static partial class Messages
{
    public const string AboutCompare = "Say what changed between two layouts, wall by wall, and which sheets are superseded.";

    public const string ArgumentOlder = "layout.json of the earlier issue.";

    public const string ArgumentNewer = "layout.json of the later issue.";

    public const string NothingChanged = "nothing changed: walls, openings, pieces and bars are as they were";

    public static string TotalsFromTo(string what, int before, int after) => Invariant($"{what}: {before} to {after} ({after - before:+0;-0;0})");

    public static string Superseded(string number, string? title) => $"superseded: {number} {title}".TrimEnd();
}
