using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Schedules;

namespace IfcCourser.Output.Sheets;

/// <summary>The storey poles of a set at their full heights: what a mason marks on a lath.</summary>
public static class PoleSheet
{
    /// <param name="number">Of the sheet, such as Q02.</param>
    public static Sheet Compose(Layout layout, string number, SheetContext context)
    {
        var text = new SheetLengths(layout.Rules.Catalog.Units);
        var poles = Pole.Of(layout);
        var fit = SheetFit.Of(context.Papers, DrawingScale.LargeFor(text.Units), scale => PoleDrawing.Draw(layout, poles, text, scale), Panels(layout, poles, text));
        return fit.Assembled(SheetText.SheetName(number, ScheduleText.PolesTitle), ScheduleText.Poles, text.Units, context, fit.Title(layout, null) with
        {
            IdentificationNumber = number,
            Title = ScheduleText.PolesTitle,
            DocumentType = ScheduleText.PolesType,
        });
    }

    private static ImmutableArray<Panel> Panels(Layout layout, ImmutableArray<Pole> poles, SheetLengths text) =>
    [
        Table.Of(
            ScheduleText.PoleTable,
            ["Pole", "Storey", "Walls"],
            2,
            poles.Select(pole => ImmutableArray.Create(
                FormattableString.Invariant($"{pole.Number}"),
                pole.Tallest.Identity.Storey ?? "-",
                string.Join(", ", pole.Walls.Select(wall => WallNumbers.Sheet(layout, wall)))))),
        WordList.Of(SheetText.Notes, ScheduleText.PoleNotes(layout.Rules.Catalog, text)),
    ];
}
