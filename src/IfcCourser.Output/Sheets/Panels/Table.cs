namespace IfcCourser.Output.Sheets.Panels;

/// <summary>A table with ruled rows.</summary>
internal static class Table
{
    public const double TextHeight = 2.5;
    private const double RowHeight = 5;
    private const double Pad = 1;

    /// <summary>Texts that are too wide for their column are shortened.</summary>
    /// <param name="title">Over the table.</param>
    /// <param name="columns">Headings and widths; the last column takes what is left.</param>
    /// <param name="rows">One text for each column.</param>
    public static Panel Of(string title, ImmutableArray<(string Heading, double Width)> columns, IEnumerable<ImmutableArray<string>> rows)
    {
        var rest = Panel.Width - columns.Sum(column => column.Width);
        var widths = columns.Select((column, i) => i == columns.Length - 1 ? column.Width + rest : column.Width).ToArray();
        var head = new[] { Heading(title), Row([.. columns.Select(column => column.Heading)], widths, Pen.Heading) };
        return new Panel([.. head], [.. rows.Select(row => Row(row, widths, Pen.Text))]);
    }

    /// <summary>A heading over a rule.</summary>
    public static PanelRow Heading(string text) => new(
        RowHeight + 1,
        [
            new TextItem(Pen.Heading, new Point(0, -RowHeight + 1), TextMetrics.Fit(text, 3, Panel.Width), 3),
            Rule(-RowHeight - 1),
        ]);

    private static PanelRow Row(ImmutableArray<string> cells, double[] widths, Pen pen)
    {
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        var x = 0.0;
        foreach (var (cell, width) in cells.Zip(widths))
        {
            var text = TextMetrics.Fit(cell, TextHeight, width - Pad);
            items.Add(new TextItem(pen, new Point(x + (Pad / 2), -RowHeight + 1.4), text, TextHeight));
            x += width;
        }

        items.Add(Rule(-RowHeight));
        return new PanelRow(RowHeight, items.ToImmutable());
    }

    private static LineItem Rule(double y) => new(Pen.Table, new Point(0, y), new Point(Panel.Width, y));
}
