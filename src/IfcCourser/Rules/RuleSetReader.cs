using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Reads rule sets: TOML, every length a text with its unit.</summary>
public static class RuleSetReader
{
    private const int LargestLoadClass = 9;

    private static readonly (string Name, HeightAim Aim)[] _aims =
    [
        ("cut-courses", HeightAim.CutCourses),
        ("corners", HeightAim.Corners),
        ("heads", HeightAim.Heads),
        ("lift", HeightAim.Lift),
        ("mortar", HeightAim.Mortar),
        ("sills", HeightAim.Sills),
        ("first-course", HeightAim.FirstCourse),
        ("other-heights", HeightAim.OtherHeights),
        ("bed", HeightAim.Bed),
    ];

    /// <summary>Reads the text of a rule set; a fault names file, line, key, what is wrong and what to do.</summary>
    /// <param name="text">TOML.</param>
    /// <param name="file">Name for messages.</param>
    public static Outcome<RuleSet> Read(string text, string file) => SettingsFile.Parse(text, file, RuleSet);

    /// <summary>A built-in rule set by its name, or the one in a .toml file.</summary>
    public static Outcome<RuleSet> Load(string nameOrFile)
    {
        if (BuiltInRuleSets.Names.Contains(nameOrFile, StringComparer.Ordinal))
        {
            return BuiltInRuleSets.Get(nameOrFile);
        }

        return nameOrFile.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)
            ? SettingsFile.Load(nameOrFile, RuleSet)
            : SettingsFile.UnknownName(nameOrFile, "rule set", BuiltInRuleSets.Names);
    }

    private static RuleSet RuleSet(SettingsTable root)
    {
        var bond = root.Table("bond");
        var openings = root.Table("openings");
        var junctions = root.Table("junctions");
        var heights = root.Table("heights");
        return new RuleSet
        {
            Name = root.Text("name"),
            Title = root.Text("title"),
            Cautions = root.Texts("cautions"),
            Layers = root.Has("layers") ? root.Choice("layers", ("iso13567", LayerNames.Iso13567), ("ncs", LayerNames.Ncs)) : null,
            Sources = root.Texts("sources"),
            MinOverlap = Overlap(bond.Table("least-overlap")),
            PreferThicknessLap = bond.OptionalTable("lap-by-thickness") is { } lap ? Interval(lap) : null,
            PreferredLapPercent = bond.Whole("preferred-lap-percent", 1, 50),
            LeastPiece = bond.LengthFromZero("least-piece"),
            LeastBearing = openings.LengthFromZero("least-bearing"),
            ModuleTolerance = openings.LengthFromZero("module-tolerance"),
            MaxShiftPercent = openings.Whole("max-shift-percent", 0, 100),
            Datum = openings.Choice("datum", ("best", Datum.Best), ("start", Datum.Start), ("end", Datum.End), ("grid", Datum.Grid)),
            GridOrigin = openings.OptionalTable("grid-origin") is { } origin ? new GridOrigin(origin.Length("x"), origin.Length("y")) : default,
            StackOpenings = openings.Flag("stack"),
            LintelLoadClass = openings.Whole("lintel-load-class", 1, LargestLoadClass),
            Allowances = new OpeningAllowances(Allowance(openings.Table("door")), Allowance(openings.Table("window"))),
            DrilledUnder = openings.LengthFromZero("drilled-under"),
            Ties = Ties(junctions),
            Tees = junctions.Choice("tee", ("tied", TeeBuild.Tied), ("bonded", TeeBuild.Bonded)),
            MovementJoints = root.OptionalTable("movement-joints") is { } joints ? MovementJointReader.Read(joints) : null,
            HeightAims = Aims(heights),
            StoreyStart = heights.Choice("storey-start", ("slab", StoreyStart.Slab), ("continuous", StoreyStart.Continuous)),
            MortarRest = heights.LengthFromZero("mortar-rest"),
            PartitionHeadGap = heights.LengthFromZero("partition-head-gap"),
            Bars = root.OptionalTable("bars") is { } bars ? BarRuleReader.Read(bars) : null,
            BondBeams = root.OptionalTable("bond-beams") is { } beams ? BondBeamReader.Read(beams) : null,
            BarList = root.OptionalTable("bar-list") is { } list ? BarListReader.Read(list) : BarList.Plain,
            EdgeDistances = root.OptionalTable("slab-edges") is { } edges ? Edges(edges) : null,
            Tolerances = root.OptionalTable("tolerances") is { } tolerances ? SlabTolerancesReader.Read(tolerances) : SlabTolerances.None,
            Membrane = root.OptionalTable("membrane") is { } membrane ? Membrane(membrane) : null,
            Aims = BondWeights(root.Table("aims")),
        };
    }

    private static BondAims BondWeights(SettingsTable table)
    {
        const long Largest = BondAims.Breach / 10;
        return new BondAims(
            table.LargeWhole("bearing", 0, Largest),
            table.LargeWhole("short-at-rake", 0, Largest),
            table.LargeWhole("cut", 1, Largest),
            table.LargeWhole("cut-at-jamb", 0, Largest),
            table.LargeWhole("short", 0, Largest),
            table.LargeWhole("not-repeated", 0, Largest),
            table.LargeWhole("cut-at-end", 0, Largest),
            table.LargeWhole("lap-under-preferred", 0, Largest),
            table.LargeWhole("joint-step", 0, Largest));
    }

    private static OverlapRule Overlap(SettingsTable table)
    {
        var tall = table.OptionalTable("tall");
        var above = tall?.Length("above");
        if (above is { } limit)
        {
            tall!.CheckPositive("above", limit);
        }

        return new OverlapRule
        {
            OfPitchPerMille = table.Whole("of-pitch-per-mille", 0, 500),
            OfHeightPerMille = table.Whole("of-height-per-mille", 0, 1000),
            Least = table.LengthFromZero("least"),
            TallAbove = above,
            TallOfHeightPerMille = tall?.Whole("of-height-per-mille", 0, 1000) ?? 0,
            TallLeast = tall is null ? Length.Zero : tall.LengthFromZero("least"),
        };
    }

    private static FillingAllowance Allowance(SettingsTable table) => new(
        table.Choice("void", ("masonry", VoidMeaning.Masonry), ("rough", VoidMeaning.Rough), ("frame", VoidMeaning.Frame), ("leaf", VoidMeaning.Leaf)),
        Margin(table.Table("frame")),
        Margin(table.Table("shim")),
        Margin(table.Table("buck")));

    private static Margin Margin(SettingsTable table) => new(table.LengthFromZero("side"), table.LengthFromZero("head"), table.LengthFromZero("sill"));

    private static ImmutableArray<HeightAim> Aims(SettingsTable table)
    {
        var texts = table.Texts("aims");
        table.Check(
            texts.Order(StringComparer.Ordinal).SequenceEqual(_aims.Select(aim => aim.Name).Order(StringComparer.Ordinal), StringComparer.Ordinal) || !table.Has("aims"),
            "aims", $"must name each of {string.Join(", ", _aims.Select(aim => aim.Name))} once");
        return [.. texts.Select(text => Array.Find(_aims, aim => string.Equals(aim.Name, text, StringComparison.Ordinal)).Aim)];
    }

    private static TieRule Ties(SettingsTable table)
    {
        var spacing = table.Length("tie-spacing");
        table.CheckPositive("tie-spacing", spacing);
        return new TieRule(table.Whole("tie-every-nth-bed", 1, 20), spacing);
    }

    private static EdgeDistanceRule Edges(SettingsTable table) => new(
        table.LengthFromZero("corner-bar"), table.LengthFromZero("other-bar"), table.LengthFromZero("about"), table.LengthFromZero("within"));

    private static MembraneRule Membrane(SettingsTable table) => new(
        table.Choice("storeys", ("lowest", MembraneStoreys.Lowest), ("every", MembraneStoreys.Every)),
        table.LengthFromZero("lap"),
        table.Has("roll") ? table.PositiveLength("roll") : null);

    private static Interval<Length> Interval(SettingsTable table)
    {
        var interval = new Interval<Length>(table.Length("least"), table.Length("largest"));
        table.Check(interval.Least >= Length.Zero && interval.Least <= interval.Largest, "least", "must not be negative nor more than largest");
        return interval;
    }
}
