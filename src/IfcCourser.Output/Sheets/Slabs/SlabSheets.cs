namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>Title and frame of the sheets of a slab.</summary>
internal static class SlabSheets
{
    public static Sheet Assembled(SheetFit fit, SlabFacts facts, string number, string place, string type)
    {
        var name = facts.Survey.Storey ?? SheetText.UnnamedStorey;
        var pens = PenTable.For(facts.Units);
        return fit.Assembled(SheetText.SheetName(number, name), SlabText.Plan, facts.Units, pens, fit.Title(facts.Survey.Layout, null) with
        {
            IdentificationNumber = number,
            SheetNumber = place,
            Title = name,
            DocumentType = type,
        });
    }
}
