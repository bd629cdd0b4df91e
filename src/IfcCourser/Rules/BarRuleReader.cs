using System.Collections.Immutable;
using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Reads a rule set's table of vertical bars.</summary>
internal static class BarRuleReader
{
    private const int MostDiameters = 200;
    private const int MostBarsInCore = 8;
    private const int MostCm2 = 1_000_000;

    /// <summary>The rule; null where the table says that it is not in use, once all of it has been read.</summary>
    public static BarRule? Read(SettingsTable table)
    {
        var isInUse = table.Flag("in-use");
        var (spacing, ceiling, starter) = (table.PositiveLength("spacing"), table.PositiveLength("spacing-ceiling"), table.Table("starter"));
        table.Check(spacing <= ceiling || !table.Has("spacing-ceiling"), "spacing", "must not be more than spacing-ceiling");
        var rule = new BarRule
        {
            FromEnd = Interval(table.Table("from-end")),
            FromJamb = Interval(table.Table("from-jamb")),
            FromMovementJoint = Interval(table.Table("from-movement-joint")),
            FromTee = table.Has("from-tee") ? table.LengthFromZero("from-tee") : null,
            LargestSpacing = spacing,
            SpacingFromHeight = table.LengthFromZero("spacing-from-height"),
            OpeningsFrom = table.LengthFromZero("openings-from"),
            OpeningsFromCm2 = table.Whole("openings-from-cm2", 0, MostCm2),
            LeastWall = table.LengthFromZero("least-wall"),
            LeastShell = table.LengthFromZero("least-shell"),
            LeastCore = table.LengthFromZero("least-core"),
            Bar = BarListReader.Size(table, "bar"),
            BarsInCore = table.Whole("bars-in-core", 1, MostBarsInCore),
            Steel = table.Text("steel"),
            Splice = Splice(table),
            Starter = new BarStarter(
                starter.Choice("foot", ("hook", true), ("straight", false)),
                starter.PositiveLength("embedment"),
                starter.Whole("hook-extension-diameters", 0, MostDiameters),
                starter.LengthFromZero("coupler-stick-up")),
            Lengths = table.Choice("lengths", ("storey", BarLengths.Storey), ("lift", BarLengths.Lift)),
            GroutLift = table.PositiveLength("grout-lift"),
            GroutLiftCured = table.Has("grout-lift-cured") ? table.PositiveLength("grout-lift-cured") : null,
            Given = [.. table.Tables("given").Select(Given)],
            NotFor = table.Texts("not-for"),
            Sources = [.. table.Tables("sources").Select(RuleSourceReader.Read)],
        };
        return isInUse ? rule : null;
    }

    private static BarSplice Splice(SettingsTable table)
    {
        var isCoupled = table.Choice("splice", ("lap", false), ("coupler", true));
        table.Has("coupler-length");
        var lap = table.Table("lap");
        var ways = (lap.Has("diameters") ? 1 : 0) + (lap.Has("table") ? 1 : 0) + (lap.Has("length") ? 1 : 0);
        table.Check(ways == 1 || !table.Has("lap"), "lap", "must have one of diameters, table and length");
        var rows = lap.Has("table") ? lap.Tables("table").Select(row => (BarListReader.Size(row, "bar"), row.PositiveLength("lap"))).ToImmutableArray() : [];
        var least = lap.Has("length") ? lap.PositiveLength("length") : lap.Has("least") ? lap.LengthFromZero("least") : Length.Zero;
        return new BarSplice(
            lap.Has("diameters") ? lap.Whole("diameters", 1, MostDiameters) : 0,
            rows,
            least,
            isCoupled ? table.PositiveLength("coupler-length") : null);
    }

    private static GivenBar Given(SettingsTable table) => new(table.Text("wall"), table.LengthFromZero("at"), table.LengthFromZero("play"), table.Text("why"));

    private static Interval<Length> Interval(SettingsTable table)
    {
        var interval = new Interval<Length>(table.Length("least"), table.Length("largest"));
        table.Check(interval.Least >= Length.Zero && interval.Least <= interval.Largest, "least", "must not be negative nor more than largest");
        return interval;
    }
}
