namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>Title and frame of the sheets of a slab.</summary>
internal static class SlabSheets
{
    /// <param name="index">Of the two sheets, from 1.</param>
    public static Sheet Assembled(SheetFit fit, SlabFacts facts, int index, string type)
    {
        var layout = facts.Survey.Layout;
        var name = facts.Survey.Storey ?? SheetText.UnnamedStorey;
        var number = FormattableString.Invariant($"L{index:00}");
        return fit.Assembled(SheetText.SheetName(number, name), SlabText.Plan, facts.Units, SheetContext.Alone(layout) with { Index = index, Count = 2 }, fit.Title(layout, null) with
        {
            IdentificationNumber = number,
            Title = name,
            DocumentType = type,
        });
    }
}
