using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace IfcCourser.Output.Json;

/// <summary>What a wall of layout.json holds beside its blocks.</summary>
internal static class ReinforcementReader
{
    public static BarScheduleRow ScheduleRow(JsonPlace row) => new(
        row["mark"].Text(),
        row["wall"].Text(),
        Size(row["size"]),
        row["steel"].Text(),
        row["number"].Whole(),
        row["shape"].Text(),
        row["a"].Length(),
        row["b"].Length(),
        row["radius"].Length(),
        row["length"].Length())
    {
        Use = row["use"].Choice<BarUse>(JsonNames.Of),
    };

    public static Lintel Lintel(JsonPlace lintel) => new(
        lintel["id"].Text(),
        lintel["opening"].Text(),
        lintel["kind"].Choice<LintelKind>(JsonNames.Of),
        lintel["product"].Text(),
        lintel["from"].Length(),
        lintel["to"].Length(),
        lintel["bottom"].Length(),
        lintel["top"].Length(),
        lintel["bearingLeft"].Length(),
        lintel["bearingRight"].Length(),
        lintel["restsOn"].Texts());

    public static Core Core(JsonPlace core)
    {
        var (minus, plus) = core["play"].Pair();
        return new Core(
            core["id"].Text(),
            core["at"].Length(),
            core["across"].Length(),
            core["bottom"].Length(),
            core["top"].Length(),
            core["diameter"].Length(),
            core["bar"].Text(),
            core["why"].Texts(),
            core["point"].Vector3().Plan,
            minus,
            plus,
            core["sharedWith"].Texts())
        {
            Bars = core.Optional("bars") is { } bars ? Bars(bars) : null,
        };
    }

    public static CornerCore CornerCore(JsonPlace core) => new(
        core["id"].Text(),
        core["wall"].Text(),
        core["core"].Text(),
        core["at"].Length(),
        core["across"].Length(),
        core["bottom"].Length(),
        core["top"].Length(),
        core["diameter"].Length());

    public static BondBeam BondBeam(JsonPlace beam) => new()
    {
        Id = beam["id"].Text(),
        Kind = beam["kind"].Choice<BondBeamKind>(JsonNames.Of),
        Course = beam.Optional("course")?.Whole(least: 1),
        Bottom = beam["bottom"].Length(),
        Top = beam["top"].Length(),
        From = beam["from"].Length(),
        To = beam["to"].Length(),
        Outline = beam.Optional("outline")?.Outline(),
        Why = beam["why"].Texts(),
        BarCount = beam["barCount"].Whole(),
        BarSize = beam["barSize"].Text(),
        Lap = beam["lap"].Length(),
        Laps = beam["laps"].List(lap => new BarLap(lap["bar"].Whole(), lap["from"].Length(), lap["to"].Length())),
        Steel = beam["steel"].List(bar => new BeamBar(
            bar["bar"].Whole(), bar["from"].Length(), bar["to"].Length(), bar["size"].Length(), bar["across"].Length(), bar["height"].Length())
        {
            Mark = bar["mark"].Text(),
        }),
        Corners = beam["cornerBars"].List(corner => new BeamCorner(corner["with"].Text(), corner["at"].Length(), corner["count"].Whole(), corner["leg"].Length())
        {
            Bars = corner["bars"].List(bar => new BeamCornerBar(bar["across"].Length(), bar["otherAcross"].Length(), bar["height"].Length()) { Mark = bar["mark"].Text() }),
        }),
        GroutVolume = beam["grout"].Number(),
    };

    public static MovementJoint MovementJoint(JsonPlace joint) =>
        new(joint["at"].Length(), joint["width"].Length(), joint["bottom"].Length(), joint["top"].Length(), joint["why"].Text());

    public static Embed Embed(JsonPlace embed) => new(embed["kind"].Text(), embed["at"].Length(), embed["z"].Length(), embed["note"].Text(), embed["size"].Text());

    private static CoreBars Bars(JsonPlace bars) => new(
        bars["count"].Whole(),
        bars["diameter"].Length(),
        bars["set"].List(stretch => stretch.Interval()),
        bars["splices"].List(stretch => stretch.Interval()),
        Either(bars["splice"], "coupler", "lap"),
        bars.Optional("starter") is { } starter ? Starter(starter) : null,
        bars.Optional("runsOnFrom") is { } below ? new CoreBelow(below["wall"].Text(), below["core"].Text()) : null,
        bars["groutVolume"].Number(),
        bars["lifts"].List(stretch => stretch.Interval()))
    {
        Marks = bars["marks"].Texts(),
    };

    private static StarterBar Starter(JsonPlace starter) =>
        new(Either(starter["foot"], "hook", "straight"), starter["embedment"].Length(), starter["hookLeg"].Length(), starter["stickUp"].Length())
        {
            Mark = starter["mark"].Text(),
        };

    private static BarSize Size(JsonPlace place)
    {
        var name = place.Text();
        if (BarSizes.Find(name) is { } size)
        {
            return size;
        }

        place.Note($"is \"{name}\", which is no bar or rod in the tables");
        return BarSizes.All[0];
    }

    private static bool Either(JsonPlace place, string yes, string no)
    {
        var text = place.Text();
        if (!string.Equals(text, yes, StringComparison.Ordinal) && !string.Equals(text, no, StringComparison.Ordinal))
        {
            place.Note($"is \"{text}\", which is neither {yes} nor {no}");
        }

        return string.Equals(text, yes, StringComparison.Ordinal);
    }
}
