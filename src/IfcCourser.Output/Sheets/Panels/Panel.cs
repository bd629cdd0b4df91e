namespace IfcCourser.Output.Sheets.Panels;

/// <summary>A table, a list of notes or a small picture beside the views; breaks between rows, repeating its head.</summary>
internal sealed record Panel(ImmutableArray<PanelRow> Head, ImmutableArray<PanelRow> Rows)
{
    /// <summary>Width of every panel, so that two stand over a title block of 180 mm (ISO 7200).</summary>
    public const double Width = 86;

    /// <summary>Between panels, both ways.</summary>
    public const double Gap = 4;

    /// <summary>What the cover says of it in the sheet's stead, such as "Cautions"; null where only the sheet has it.</summary>
    public string? OnCover { get; init; }

    public double HeadHeight => Head.Sum(row => row.Height);
}
