using IfcCourser.Settings;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Jobs;

/// <summary>Reads what a job file has built in for others.</summary>
internal static class EmbedReader
{
    private const string InBeam = "beam";

    /// <summary>Common practice, no source.</summary>
    private static readonly Length _usualClear = Length.FromMm(50);

    public static GivenEmbed Read(SettingsTable table)
    {
        var kind = table.Text("kind");
        table.Check(kind.Length > 0 || !table.Has("kind"), "kind", "must not be empty");
        var (at, every, to) = (table.LengthFromZero("at"), table.Has("every") ? table.PositiveLength("every") : (Length?)null, table.Has("to") ? table.Length("to") : (Length?)null);
        table.Check(to is null || every is not null, "to", "stands beside every only: it says where the spacing ends");
        table.Check(to is not { } end || end >= at, "to", "must not be less than at");
        return new GivenEmbed
        {
            Kind = kind,
            Size = table.OptionalText("size") ?? string.Empty,
            Note = table.OptionalText("note") ?? string.Empty,
            At = at,
            Every = every,
            To = to,
            Height = Height(table),
            Play = table.Has("play") ? table.LengthFromZero("play") : Length.Zero,
            Clear = table.Has("clear") ? table.LengthFromZero("clear") : _usualClear,
        };
    }

    /// <summary>Null for "beam".</summary>
    private static Length? Height(SettingsTable table)
    {
        var text = table.Text("height");
        if (text.Length == 0 || string.Equals(text, InBeam, StringComparison.Ordinal))
        {
            return null;
        }

        var isLength = LengthText.TryParse(text, out _, out _);
        table.Check(isLength, "height", $"is \"{text}\", which is neither {InBeam} nor a length, such as \"4 ft\"");
        return isLength ? table.LengthFromZero("height") : null;
    }
}
