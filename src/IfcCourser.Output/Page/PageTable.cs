namespace IfcCourser.Output.Page;

/// <summary>A plain table: a caption, heads, rows that begin with what they are of.</summary>
internal static class PageTable
{
    /// <param name="caption">Also what a reader of the screen is told.</param>
    /// <param name="id">For filters; null where there are none.</param>
    /// <param name="heads">Heads of columns, and whether they hold numbers.</param>
    /// <param name="rows">Attributes of the row, and its cells.</param>
    public static void Write(Html html, string caption, string? id, IReadOnlyList<(string Text, bool IsNumber)> heads, IEnumerable<(Markup Attributes, IReadOnlyList<Markup> Cells)> rows)
    {
        html.Line($"<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"{caption}\"><table{Id(id)}><caption>{caption}</caption>");
        html.Line($"<thead><tr>{Markup.Joined(string.Empty, heads.Select(head => new Markup($"<th scope=\"col\"{Class(head.IsNumber)}>{HtmlText.Escaped(head.Text)}</th>")))}</tr></thead><tbody>");
        foreach (var (attributes, cells) in rows)
        {
            var others = cells.Skip(1).Select((cell, i) => new Markup($"<td{Class(heads[i + 1].IsNumber)}>{cell.Text}</td>"));
            html.Line($"<tr{attributes}><th scope=\"row\">{cells[0]}</th>{Markup.Joined(string.Empty, others)}</tr>");
        }

        html.Line($"</tbody></table></div>");
    }

    private static Markup Id(string? id) => id is null ? Markup.None : new Markup($" id=\"{id}\"");

    private static string Class(bool isNumber) => isNumber ? " class=\"number\"" : string.Empty;
}
