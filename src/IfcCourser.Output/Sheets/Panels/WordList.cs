namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Numbered paragraphs.</summary>
internal static class WordList
{
    private const double TextHeight = 2.5;
    private const double LineHeight = 4;
    private const double Indent = 7;

    public static Panel Of(string title, IEnumerable<string> paragraphs) =>
        new([Table.Heading(title)], [.. paragraphs.Select((text, i) => Paragraph(i + 1, text))]);

    private static PanelRow Paragraph(int number, string text)
    {
        var lines = TextMetrics.Wrap(text, TextHeight, Panel.Width - Indent);
        var items = lines.Select((line, i) => Line(Indent, line, i)).Prepend(Line(0, FormattableString.Invariant($"{number}"), 0));
        return new PanelRow((lines.Length * LineHeight) + 1, [.. items]);
    }

    private static TextItem Line(double x, string text, int line) =>
        new(Pen.Text, new Point(x, -LineHeight * (line + 1)), TextMetrics.Fit(text, TextHeight, Panel.Width - x), TextHeight);
}
