using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>Reads block catalogs: TOML, every length a text with its unit.</summary>
public static class CatalogReader
{
    private static readonly Lazy<Words> _commonWords = new(ReadCommonWords);

    /// <summary>Reads the text of a catalog; a fault names file, line, key, what is wrong and what to do.</summary>
    /// <param name="text">TOML.</param>
    /// <param name="file">Name for messages.</param>
    public static Outcome<Catalog> Read(string text, string file) => SettingsFile.Parse(text, file, Catalog);

    /// <summary>A built-in catalog by its name, or the one in a .toml file.</summary>
    public static Outcome<Catalog> Load(string nameOrFile)
    {
        if (BuiltInCatalogs.Names.Contains(nameOrFile, StringComparer.Ordinal))
        {
            return BuiltInCatalogs.Get(nameOrFile);
        }

        return nameOrFile.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)
            ? SettingsFile.Load(nameOrFile, Catalog)
            : SettingsFile.UnknownName(nameOrFile, "catalog", BuiltInCatalogs.Names);
    }

    private static Catalog Catalog(SettingsTable root)
    {
        var unit = root.Table("unit");
        var joints = root.Table("joints");
        var cutting = root.Table("cutting");
        var layout = root.Table("layout");
        var words = root.OptionalTable("words") is { } own ? ReadWords(own) : _commonWords.Value;
        var catalog = new Catalog
        {
            Name = root.Text("name"),
            Title = root.Text("title"),
            Source = root.Text("source"),
            Units = root.Choice("units", ("mm", UnitSystem.Metric), ("inch", UnitSystem.Inch)),
            UnitLength = unit.Length("length"),
            UnitHeight = unit.Length("height"),
            PartLengths = unit.Lengths("part-lengths"),
            OtherHeights = unit.Lengths("other-heights"),
            Widths = [.. unit.Tables("widths", plainKey: "actual").Select(Width)],
            HeadJoint = joints.Range("head"),
            BedJoint = joints.Range("bed"),
            LevellingBed = joints.Range("levelling-bed"),
            CutGrid = cutting.Length("grid"),
            Kerf = cutting.Length("kerf"),
            MinPiece = cutting.Length("least-piece"),
            PreferredPiece = cutting.Length("preferred-piece"),
            LeastRip = cutting.OptionalLength("least-rip"),
            LeastPier = layout.Length("least-pier"),
            Module = layout.Length("module"),
            LintelBearing = layout.Length("lintel-bearing"),
            Panels = root.OptionalTable("movement-joints") is { } panels ? Panels(panels) : null,
            Lintels = [],
            Troughs = [],
            Cores = [.. root.Tables("cores").Select(Core).OrderByDescending(core => core.LeastWall)],
            MasonryWords = words.Masonry,
            OtherWords = words.Other,
        };
        CatalogCheck.Unit(unit, catalog);
        CatalogCheck.Cutting(cutting, catalog);
        CatalogCheck.Layout(layout, catalog);
        catalog = catalog with
        {
            Lintels = [.. root.Tables("lintels").Select(table => LintelReader.Read(table, catalog))],
            Troughs = [.. root.Tables("troughs").Select(table => TroughReader.Read(table, catalog))],
        };
        return root.OptionalTable("ordering") is { } ordering ? catalog with { Ordering = OrderingReader.Read(ordering, catalog) } : catalog;
    }

    private static PanelLimits Panels(SettingsTable table)
    {
        const int LargestShare = 10_000;
        var limits = new PanelLimits(table.Length("longest-panel"), table.Whole("of-height-per-mille", 0, LargestShare));
        table.CheckPositive("longest-panel", limits.Longest);
        return limits;
    }

    private static UnitWidth Width(SettingsTable table)
    {
        var actual = table.Length("actual");
        var nominal = table.OptionalLength("nominal") ?? actual;
        table.CheckPositive("actual", actual);
        table.Check(actual <= nominal, "actual", "must not be more than the nominal width");
        return new UnitWidth(nominal, actual);
    }

    private static CoreOption Core(SettingsTable table)
    {
        var core = new CoreOption(table.Length("diameter"), table.Length("least-wall"), table.Length("clearance"));
        table.CheckPositive("diameter", core.Diameter);
        table.Check(core.LeastWall > core.Diameter, "least-wall", "must be more than the core's diameter");
        table.Check(core.Clearance * 2 >= core.Diameter, "clearance", "must be at least half the core's diameter");
        return core;
    }

    private static Words ReadCommonWords()
    {
        const string File = "Catalogs/words.toml";
        return SettingsFile.Parse(SettingsFile.BuiltIn(File), File, ReadWords) is { IsOk: true } outcome
            ? outcome.Value
            : throw new InvalidOperationException($"{File} can't be read.");
    }

    private static Words ReadWords(SettingsTable table) => new(ReadWords(table, "masonry"), ReadWords(table, "other"));

    // A word of one letter, or none, would be found in every name.
    private static ImmutableArray<string> ReadWords(SettingsTable table, string key)
    {
        var words = table.Texts(key);
        table.Check(words.All(word => word.Count(char.IsLetterOrDigit) > 1), key, "must hold words of two letters or more");
        return words;
    }

    private sealed record Words(ImmutableArray<string> Masonry, ImmutableArray<string> Other);
}
