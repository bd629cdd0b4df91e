using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets;

/// <summary>What the sheets of a set have in common, and the place of one among them.</summary>
/// <param name="Pens">Which layer names the sheets take.</param>
/// <param name="Papers">Sizes to choose from, smallest first.</param>
/// <param name="Index">From 1.</param>
/// <param name="Count">Sheets in the set.</param>
public sealed record SheetContext(PenTable Pens, ImmutableArray<PaperSize> Papers, int Index, int Count)
{
    /// <summary>A sheet on its own, with the papers and pens of the layout's units.</summary>
    public static SheetContext Alone(Layout layout) => new(PenTable.For(layout.Rules), PaperSize.For(layout.Rules.Catalog.Units), 1, 1);

    /// <summary>As printed in the title block: 3/12.</summary>
    public string Place => FormattableString.Invariant($"{Index}/{Count}");
}
