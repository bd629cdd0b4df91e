namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Samples of marks with their meaning, one below the other.</summary>
internal static class MarkSamples
{
    public const double RowHeight = 6;
    public const double Width = 14;

    /// <summary>Middle of a sample, from its row's upper left corner.</summary>
    public static Point Middle => new(Width / 2, -RowHeight / 2);

    /// <summary>A sample of a face.</summary>
    public static Box Face => new(1, -RowHeight + 1, Width, -1);

    /// <param name="rows">Each with whether the sheet uses the mark.</param>
    public static Panel Of(IEnumerable<(bool IsUsed, PanelRow Row)> rows)
    {
        var shown = rows.Where(row => row.IsUsed).Select(row => row.Row).ToArray();
        var picture = shown.SelectMany((row, i) => row.Items.Select(item => item.MovedBy(new Point(0, -i * RowHeight))));
        return new Panel([Table.Heading(SheetText.Legend)], [new PanelRow(shown.Length * RowHeight, [.. picture])]);
    }

    public static PanelRow Row(string meaning, params ReadOnlySpan<SheetItem> sample) => new(
        RowHeight,
        [
            .. sample,
            new TextItem(
                Pen.Text,
                new Point(Width + 4, -RowHeight / 2),
                TextMetrics.Fit(meaning, Table.TextHeight, Panel.Width - Width - 4),
                Table.TextHeight,
                TextAnchor.MiddleLeft),
        ]);

    /// <summary>A sample of a line.</summary>
    public static LineItem Across(Pen pen) => new(pen, new Point(0, -RowHeight / 2), new Point(Width + 1, -RowHeight / 2));

    public static TextItem Word(string word, double aside = 0, Pen pen = Pen.Text) =>
        new(pen, Middle + new Point(aside, 0), word, Table.TextHeight, TextAnchor.Middle);
}
