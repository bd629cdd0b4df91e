using IfcCourser.Layouts;
using static System.FormattableString;

namespace IfcCourser.Output.Ordering;

/// <summary>Words of the workbook beside those of <see cref="OrderText"/>.</summary>
internal static class WorkbookWords
{
    public const string Prices = "Prices are the buyer's: a price counts for a pack where there are packs, else for a unit of the amount. Price units or their pallets, not both.";

    public const string Examples = "Masses, pallets and bags come from the catalog; those of the built-in catalogs are examples: replace them by the supplier's.";

    public const string Cautions = "Quantities follow the layout, which designs no structure: an engineer confirms lintels, bars and grout. Sawing frees silica dust. Heavy pieces are marked.";

    public const string NetOnly = "Net amounts as laid out; waste and whole packs are reckoned over the job, on the first sheet.";

    public const string Deliveries = "Each delivery has its waste and whole packs; the first sheet adds them up. Offcuts are kept for later deliveries where their use reaches that far.";

    public const string SawHint = "U7: a unit taken from the pallet. U7 offcut: sawn from what is left of it. Marks are those of the wall sheets.";

    public const string Stock = "Order the stock lengths, or the bars cut to length by the supplier, not both. Stock lengths come from the rule set's bar-list: replace them by the supplier's.";

    public const string Total = "Total";

    public static string Title(Layout layout) => $"Take-off: {layout.Model.ProjectName ?? layout.Model.File}";

    public static string Run(Layout layout) => $"{layout.Model.File}, {layout.Model.Date}; catalog {layout.Rules.Catalog.Name}, rules {layout.Rules.Set.Name}";

    public static string Saving(SawList saw) =>
        Invariant($"{saw.Pieces} pieces are sawn from {saw.Units.Length} units: using offcuts ({Scope(saw.Reuse)}) saves {saw.Saved}. ")
        + (saw.Gap == 0 ? "Sawn so, each strip of a unit to one height, no fewer units would do." : Invariant($"{saw.LeastUnits} units at least are needed; whether fewer than {saw.Units.Length} do was not settled."));

    private static string Scope(OffcutReuse reuse) => reuse switch
    {
        OffcutReuse.Wall => "within each wall",
        OffcutReuse.Storey => "within each storey",
        _ => "anywhere",
    };
}
