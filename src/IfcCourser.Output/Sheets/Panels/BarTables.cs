using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Where a wall's bars stand and why, and what is cut for them.</summary>
internal static class BarTables
{
    /// <summary>Each bar's place, and how far it may move before it comes too near a joint.</summary>
    public static Panel Places(WallFacts facts, string title) => Table.Of(
        title,
        ["Tag", "At", "Play -", "Play +", "Why"],
        4,
        facts.Wall.Cores.Select(core => ImmutableArray.Create(
            core.Id,
            facts.Text.Dimension(core.At),
            facts.Text.Piece(core.PlayMinus),
            facts.Text.Piece(core.PlayPlus),
            string.Join(", ", core.Why.Select(SheetText.BarReason)))));

    /// <summary>A row for each mark of the bar schedule: starters, then what is set after the blocks.</summary>
    public static Panel Steel(WallFacts facts, string title)
    {
        var lengths = facts.Layout.BarSchedule.GroupBy(row => row.Mark, StringComparer.Ordinal).ToDictionary(mark => mark.Key, mark => mark.First(), StringComparer.Ordinal);
        return Table.Of(
            title,
            ["Mark", "Bar", "Shape", "Length", "Lap", "In"],
            5,
            facts.Wall.Cores.SelectMany(Parts).Where(part => lengths.ContainsKey(part.Mark))
                .GroupBy(part => (part.Mark, part.Lap)).OrderBy(part => facts.Layout.BarSchedule.IndexOf(lengths[part.Key.Mark])).ThenBy(part => part.Key.Lap)
                .Select(part => ImmutableArray.Create(
                    part.Key.Mark,
                    part.First().Core.Bar,
                    lengths[part.Key.Mark].Shape,
                    Schedule(facts.Layout.Rules).Dimension(lengths[part.Key.Mark].Length),
                    part.Key.Lap is { } lap ? facts.Text.Dimension(lap) : "-",
                    SheetText.Tags(part.Select(p => p.Core)))));
    }

    /// <summary>Equal bars of some walls: what the bender makes of them, and what they weigh.</summary>
    /// <param name="of">Whose bars, as the table's title says.</param>
    /// <param name="areVertical">Those of cores, else those of bond beams.</param>
    public static Panel Schedule(Layout layout, IEnumerable<string> walls, string of = SheetText.BarScheduleOfStorey, bool areVertical = true)
    {
        var known = walls.ToHashSet(StringComparer.Ordinal);
        var text = Schedule(layout.Rules);
        var rows = layout.BarSchedule.Where(row => known.Contains(row.Wall) && row.Use == BarUse.Vertical == areVertical).ToArray();
        var cells = rows.GroupBy(row => row.Mark, StringComparer.Ordinal).Select(mark => Cells(
            mark.Key,
            mark.Sum(row => row.Number).ToString(CultureInfo.InvariantCulture),
            mark.First().Shape,
            text.Piece(mark.First().A),
            mark.First().B == Length.Zero ? "-" : text.Piece(mark.First().B),
            mark.First().Radius == Length.Zero ? "-" : text.Piece(mark.First().Radius),
            text.Piece(mark.First().Length),
            Mass(mark)));
        return Table.Of(
            rows.Length == 0 ? string.Empty : SheetText.BarSchedule(of, rows[0].Size.Name, text.Units),
            Cells("Mark", "No", "Shape", areVertical ? "A" : "A, B", "B", "R", "Length", text.Units == UnitSystem.Inch ? "lb" : "kg"),
            2,
            rows.Length == 0 ? [] : cells.Append(Cells("", rows.Sum(row => row.Number).ToString(CultureInfo.InvariantCulture), "in all", "", "", "", "", Mass(rows))));

        // The legs of bars around corners are equal, so that one column holds both.
        ImmutableArray<string> Cells(params ImmutableArray<string> all) => areVertical ? all : all.RemoveAt(4);

        string Mass(IEnumerable<BarScheduleRow> some) => SheetText.Mass(some.Sum(row => row.Mass), text.Units);
    }

    /// <summary>The schedule's own unit: a list in inches stays one beside millimetres.</summary>
    private static SheetLengths Schedule(LayoutRules rules) => new(rules.BarListForm == BarListForm.Bs8666 ? UnitSystem.Metric : UnitSystem.Inch);

    private static IEnumerable<(string Mark, Length? Lap, Core Core)> Parts(Core core)
    {
        if (core.Bars is not { } bars)
        {
            yield break;
        }

        if (bars.Starter is { } starter)
        {
            yield return (starter.Mark, bars.IsCoupled ? null : starter.StickUp, core);
        }

        foreach (var (bar, mark) in bars.Set.Zip(bars.Marks))
        {
            yield return (mark, bars.IsCoupled ? null : bars.Splices.Where(splice => splice.From == bar.From).Select(splice => (Length?)splice.Size).FirstOrDefault(), core);
        }
    }
}
