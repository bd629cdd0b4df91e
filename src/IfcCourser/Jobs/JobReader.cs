using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Settings;
using IfcCourser.Walls;

namespace IfcCourser.Jobs;

/// <summary>Reads job files: TOML, the keys named as the options of the command line.</summary>
public static class JobReader
{
    /// <summary>ISO 8601 calendar dates, with or without time and offset.</summary>
    private static readonly string[] _isoDates = ["yyyy-MM-dd", "yyyy-MM-dd'T'HH:mm:ssK"];

    /// <summary>The job of a file; catalogs and rule files it names lie beside it unless they are given with a full path.</summary>
    public static Outcome<Job> Load(string path) => SettingsFile.Load(path, table => Read(table, Path.GetDirectoryName(Path.GetFullPath(path))!));

    /// <param name="file">Named in faults.</param>
    public static Outcome<Job> Read(string text, string file) => SettingsFile.Parse(text, file, table => Read(table, string.Empty));

    /// <summary>Whether a text is a date that can be stamped.</summary>
    public static bool IsDate(string text) =>
        DateTime.TryParseExact(text, _isoDates, CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    private static Job Read(SettingsTable table, string folder)
    {
        var facts = new JobFacts
        {
            Project = table.OptionalText("project"),
            Client = table.OptionalText("client"),
            Author = table.OptionalText("author"),
            CheckedBy = table.OptionalText("checked-by"),
            Revisions = [.. table.Tables("revisions").Select(Revision)],
        };
        return new Job(facts, Date(table), Options(table, folder), [.. table.Tables("wall").Select(Wall)]) { Phases = Phases(table) };
    }

    private static JobPhases Phases(SettingsTable table)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        ImmutableArray<JobPhase> listed = [.. table.Tables("phase").Select(phase => Phase(phase, names))];
        var byStorey = table.Has("phases") && table.Choice("phases", ("one", false), ("storey", true));
        table.Check(!byStorey || listed.IsEmpty, "phases", "is \"storey\", so that [[phase]] must not list deliveries: leave out one of them");
        return new JobPhases(byStorey, listed);
    }

    private static JobPhase Phase(SettingsTable table, HashSet<string> names)
    {
        var phase = new JobPhase(table.Text("name"), Texts(table, "storeys") ?? [], Texts(table, "walls") ?? []);
        table.Check(!phase.Storeys.IsEmpty || !phase.Walls.IsEmpty, "name", "is a delivery of nothing: name its storeys or walls");
        table.Check(names.Add(phase.Name), "name", $"is \"{phase.Name}\" as that of a delivery before it: no two deliveries of one name");
        return phase;
    }

    private static string? Date(SettingsTable table)
    {
        var date = table.OptionalText("date");
        table.Check(date is null || date.Length == 0 || IsDate(date), "date", "is no date: write year, month and day, such as \"2026-03-31\"");
        return date;
    }

    private static Revision Revision(SettingsTable table) =>
        new(table.Text("mark"), Date(table) ?? string.Empty, table.Text("what"), table.OptionalText("by") ?? string.Empty);

    private static JobWall Wall(SettingsTable table)
    {
        var joints = table.Has("movement-joints") ? table.Lengths("movement-joints") : [];
        table.Check(joints.All(joint => joint > default(Units.Length)), "movement-joints", "must be more than nothing, each");
        return new JobWall(table.Text("name"), joints, [.. table.Tables("embeds").Select(EmbedReader.Read)]);
    }

    private static JobOptions Options(SettingsTable table, string folder) => new()
    {
        Catalog = Beside(table.OptionalText("catalog"), folder),
        Rules = Beside(table.OptionalText("rules"), folder),
        Openings = Choice(table, "openings", ("keep", OpeningPolicy.Keep), ("move", OpeningPolicy.Move), ("resize", OpeningPolicy.Resize)),
        MaxShift = table.Has("max-shift") ? table.LengthFromZero("max-shift") : null,
        Walls = Choice(table, "walls", ("masonry", WallChoice.Masonry), ("all", WallChoice.All)),
        Width = Choice(table, "width", ("exact", WidthMatch.Exact), ("nearest", WidthMatch.Nearest), ("any", WidthMatch.Any)),
        Only = Texts(table, "only"),
        Exclude = Texts(table, "exclude"),
        Storeys = Texts(table, "storey"),
        Formats = Texts(table, "formats"),
        Sheet = table.OptionalText("sheet"),
        DxfPerSheet = table.Has("dxf-per-sheet") ? table.Flag("dxf-per-sheet") : null,
        FailOn = table.Has("fail-on") ? table.Choice("fail-on", [.. JobOptions.FailOnNames.Select(name => (name, name))]) : null,
    };

    private static T? Choice<T>(SettingsTable table, string key, params ReadOnlySpan<(string Name, T Value)> choices)
        where T : struct => table.Has(key) ? table.Choice(key, choices) : null;

    private static ImmutableArray<string>? Texts(SettingsTable table, string key) => table.Has(key) ? table.Texts(key) : null;

    private static string? Beside(string? nameOrFile, string folder) =>
        nameOrFile is not null && nameOrFile.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) ? Path.Combine(folder, nameOrFile) : nameOrFile;
}
