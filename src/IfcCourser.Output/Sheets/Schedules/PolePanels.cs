using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;

namespace IfcCourser.Output.Sheets.Schedules;

/// <summary>What stands beside storey poles: which wall takes which, and how a pole is used.</summary>
internal static class PolePanels
{
    public static ImmutableArray<Panel> Of(Layout layout, ImmutableArray<Pole> poles, SheetLengths text) =>
    [
        Table.Of(
            ScheduleText.PoleTable,
            ["Pole", "Storey", "Walls"],
            2,
            poles.Select(pole => ImmutableArray.Create(
                FormattableString.Invariant($"{pole.Number}"),
                pole.Storey ?? "-",
                string.Join(", ", pole.Walls.Select(wall => WallNumbers.Sheet(layout, wall)))))),
        WordList.Of(SheetText.Notes, ScheduleText.PoleNotes(layout.Rules.Catalog, text)),
    ];
}
