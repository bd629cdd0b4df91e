using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Reads a rule set's table of bond beams.</summary>
internal static class BondBeamReader
{
    private const int MostBars = 8;

    public static BondBeamRule Read(SettingsTable table)
    {
        var rule = new BondBeamRule(
            table.Choice("walls", ("all", BeamedWalls.All), ("bearing", BeamedWalls.Bearing)),
            table.LengthFromZero("least-wall"),
            table.Choice("tops", ("none", BeamedTops.None), ("level", BeamedTops.Level), ("raked", BeamedTops.Raked)),
            table.LengthFromZero("top-within"),
            table.Has("heights") ? [.. table.Lengths("heights").Order()] : [],
            table.Has("largest-spacing") ? table.PositiveLength("largest-spacing") : null,
            table.OptionalTable("openings") is { } openings ? Openings(openings) : null,
            Bars(table));
        table.Check(rule.Heights.All(height => height > Length.Zero), "heights", "must be more than nothing");
        return rule;
    }

    private static OpeningBeamRule Openings(SettingsTable table) =>
        new(table.LengthFromZero("from"), table.LengthFromZero("extension"), table.Flag("over"), table.Flag("under"));

    private static BeamBars Bars(SettingsTable table)
    {
        var bars = new BeamBars(
            table.Whole("bars", 1, MostBars),
            BarListReader.Size(table, "bar"),
            table.Text("steel"),
            table.PositiveLength("lap"),
            table.PositiveLength("stock"),
            new BeamCover(table.LengthFromZero("end-cover"), table.LengthFromZero("grout-cover"), table.LengthFromZero("concrete-cover")));
        table.Check(bars.Stock >= bars.Lap * 5 || !table.Has("stock"), "stock", "must be at least five laps, so that laps can be staggered");
        return bars;
    }
}
