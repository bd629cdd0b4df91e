namespace IfcCourser.Output.Sheets.Panels;

/// <summary>A table with ruled rows; columns are as wide as their longest text, one of them takes what is left and wraps, between words if it can.</summary>
internal static class Table
{
    public const double TextHeight = 2.5;
    private const double LineHeight = 4;
    private const double HeadingHeight = 6;
    private const double Pad = 2;

    /// <summary>As near as texts of two columns come where else a word would break.</summary>
    private const double LeastPad = 1;

    /// <summary>A table with one text for each heading in each row.</summary>
    /// <param name="title">Over the table.</param>
    /// <param name="headings">Of the columns.</param>
    /// <param name="wrapping">Index of the column that wraps.</param>
    /// <param name="rows">As many texts as headings.</param>
    public static Panel Of(string title, ImmutableArray<string> headings, int wrapping, IEnumerable<ImmutableArray<string>> rows)
    {
        var cells = rows.ToArray();
        var widths = headings.Select((heading, i) => cells.Select(row => row[i]).Append(heading)
            .Max(text => i == wrapping ? LongestWord(text) : TextMetrics.Width(text, TextHeight))).ToArray();
        var pad = Math.Clamp((Panel.Width - widths.Sum()) / widths.Length, LeastPad, Pad);
        widths = [.. widths.Select(width => width + pad)];
        widths[wrapping] = 0;
        widths[wrapping] = Panel.Width - widths.Sum();
        return new Panel(
            headings.All(heading => heading.Length == 0) ? [Heading(title)] : [Heading(title), Row(headings, widths, pad, Pen.Heading)], [.. cells.Select(row => Row(row, widths, pad, Pen.Text))]);
    }

    /// <summary>A heading over a rule.</summary>
    public static PanelRow Heading(string text) => new(
        HeadingHeight,
        [
            new TextItem(Pen.Heading, new Point(0, -HeadingHeight + 2), TextMetrics.Fit(text, 3, Panel.Width), 3),
            Rule(-HeadingHeight),
        ]);

    private static double LongestWord(string text) => text.Split(' ').Max(word => TextMetrics.Width(word, TextHeight));

    private static PanelRow Row(ImmutableArray<string> cells, double[] widths, double pad, Pen pen)
    {
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        var (x, most) = (0.0, 1);
        foreach (var (cell, width) in cells.Zip(widths))
        {
            var lines = TextMetrics.WrapAll(cell, TextHeight, width - pad + 0.001);
            items.AddRange(lines.Select((line, i) => new TextItem(
                pen,
                new Point(x + (pad / 2), -(LineHeight * (i + 1)) + 0.4),
                line,
                TextHeight)));
            most = Math.Max(most, lines.Length);
            x += width;
        }

        var height = (most * LineHeight) + 1;
        items.Add(Rule(-height));
        return new PanelRow(height, items.ToImmutable());
    }

    private static LineItem Rule(double y) => new(Pen.Table, new Point(0, y), new Point(Panel.Width, y));
}
