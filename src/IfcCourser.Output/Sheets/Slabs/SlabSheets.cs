using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>Title and frame of the sheets of a slab.</summary>
internal static class SlabSheets
{
    public static Sheet Assembled(SheetFit fit, SlabFacts facts, int index, string type) =>
        Assembled(fit, facts.Survey.Layout, facts.Survey.Storey, new Place(index, index, 2), type);

    public static Sheet Assembled(SheetFit fit, Layout layout, string? storey, Place place, string type)
    {
        var name = storey ?? SheetText.UnnamedStorey;
        var number = FormattableString.Invariant($"L{place.Number:00}");
        return fit.Assembled(SheetText.SheetName(number, name), SlabText.Plan, layout.Rules.Catalog.Units, SheetContext.Alone(layout) with { Index = place.Index, Count = place.Count }, fit.Title(layout, null) with
        {
            IdentificationNumber = number,
            Title = name,
            DocumentType = type,
        });
    }

    /// <param name="Number">Of the sheet.</param>
    /// <param name="Index">Among those written together, from 1.</param>
    /// <param name="Count">Of these.</param>
    public readonly record struct Place(int Number, int Index, int Count);
}
