using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Coordination;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Bcf;

/// <summary>Every word of our topics and their pictures.</summary>
internal static class IssueText
{
    public const string Author = "IfcCourser";
    public const string Open = "Open";
    public const string Closed = "Closed";
    public const string ConsentType = "Request";
    public const string IssueType = "Issue";
    public const string OpeningLabel = "opening";
    public const string WallLabel = "wall";
    public const string AsDrawn = "red, dashed: as drawn";
    public const string OnModule = "red, dashed: where it would stand on the module";
    public const string AtPlace = "red circle: the place";
    public const string CutPieces = "grey: cut blocks";

    /// <summary>Topic types that our topics have.</summary>
    public static ImmutableArray<string> Types => [IssueType, ConsentType];

    public static ImmutableArray<string> Statuses => [Closed, Open];

    /// <summary>By severity, from the least.</summary>
    public static ImmutableArray<string> Priorities => ["Low", "Normal", "High"];

    public static string Priority(Severity severity) => Priorities[(int)severity];

    /// <summary>What is wrong: the first clause of the message, with the wall's name where it names no opening.</summary>
    public static string Title(WallIdentity? wall, OpeningLayout? opening, Finding finding)
    {
        var name = opening?.Opening.Label ?? wall?.Label;
        var clause = FirstClause(finding.Message, name);
        return name is null || clause.Contains(name, StringComparison.Ordinal) ? clause : $"{name}: {clause}";
    }

    /// <summary>Where, what and how much, what keeping it costs.</summary>
    public static string Description(WallIdentity? wall, OpeningLayout? opening, IEnumerable<Finding> findings, UnitSystem units)
    {
        var where = string.Join(", ", new[] { wall?.Storey, wall?.Label, opening?.Opening.Label }.OfType<string>());
        return string.Join('\n', new[] { where }.Where(text => text.Length > 0)
            .Concat(findings.Select(finding => Sentence(finding.Message)))
            .Concat(opening?.Check is { Cost: { } cost } ? [Cost(cost)] : [])
            .Concat(opening?.Check is { Deviation: { } deviation } ? [Ways(deviation, units)] : []));
    }

    public static string Remedy(FindingCode code) => code.Remedy;

    /// <summary>The shift beside the opening: one figure, or how much each jamb moves; then that of sill and head.</summary>
    public static string Shift(Length left, Length right, Length sill, Length head, UnitSystem units)
    {
        ImmutableArray<(string Name, Length Way)> along = left == right ? [(string.Empty, left)] : [("left ", left), ("right ", right)];
        ImmutableArray<(string Name, Length Way)> up = sill == head ? [("up ", sill)] : [("sill ", sill), ("head ", head)];
        return string.Join(", ", along.Concat(up).Where(edge => edge.Way != Length.Zero).Select(edge => edge.Name + Signed(edge.Way, units)));
    }

    /// <summary>Up to the first colon or semicolon that a blank follows; names hold colons of their own (family:type:number), the one at hand may hold any.</summary>
    private static string FirstClause(string message, string? name)
    {
        var named = string.IsNullOrEmpty(name) ? -1 : message.IndexOf(name, StringComparison.Ordinal);
        for (var i = 0; i + 1 < message.Length; i++)
        {
            i = i == named ? i + name!.Length : i;
            if (i + 1 < message.Length && message[i] is ':' or ';' && message[i + 1] == ' ')
            {
                return message[..i];
            }
        }

        return message.TrimEnd('.');
    }

    private static string Sentence(string text) => text.EndsWith('.') ? text : text + ".";

    private static string Cost(KeepCost cost) => $"Kept as drawn, against where it would stand, it costs {CostText.Of(cost)}.";

    private static string Ways(OpeningDeviation deviation, UnitSystem units)
    {
        var ways = ((string Name, Length? Way)[])[("left jamb", deviation.Left), ("right jamb", deviation.Right), ("sill", deviation.Sill), ("head", deviation.Head)];
        return $"Ways to the lines as drawn: {string.Join(", ", ways.Where(way => way.Way is not null).Select(way => $"{way.Name} {Signed(way.Way!.Value, units)}"))}.";
    }

    private static string Signed(Length length, UnitSystem units) => (length > Length.Zero ? "+" : string.Empty) + LengthText.WithUnit(length, units);
}
