using System.Globalization;
using System.Text;
using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Ordering;
using IfcCourser.Output.Page;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Walls;
using static System.FormattableString;

namespace IfcCourser.Output.Comparisons;

/// <summary>One self-contained HTML file of what a revision changes: walls, what they cost in pieces, the order, sheets to withdraw.</summary>
public static class ComparisonPage
{
    private const string Kind = "What the revision changes";

    private const string Same = "Nothing changed: walls, openings, pieces and bars are as they were.";

    private const string WallsLead = "Walls are the same by GlobalId, else by their place. Pieces: what a wall takes more than before, less where negative; a wall that comes or goes counts in full in the totals.";

    private const string OrderLead = "Lines of the order that change, waste included; amounts are of the whole job. Without lines, the layouts were written without an order or it is the same.";

    private const string SheetsLead = "Sheets of the earlier issue that must be withdrawn.";

    private static readonly ImmutableArray<(string Id, string Heading)> _parts =
        [("changes", "Walls"), ("totals", "Totals"), ("order", "Order"), ("sheets", "Superseded sheets"), ("cautions", "Cautions")];

    private static readonly (string, bool)[] _figures = [("Whole", true), ("Cut", true), ("Saw cuts", true), ("Lintels", true), ("Bars", true)];

    /// <summary>Writes UTF-8; the same layouts give the same bytes.</summary>
    /// <param name="superseded">Sheets of the older issue.</param>
    public static void Write(Layout older, Layout newer, LayoutComparison comparison, IReadOnlyCollection<SetSheet> superseded, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true) { NewLine = "\n" };
        var html = new Html(writer);
        var frame = new PageFrame(html, "words.js", "filters.js", "tables.js");
        var title = newer.Model.ProjectName ?? newer.Model.File;
        frame.Head($"{Kind}: {title}");
        frame.Masthead(
            _parts[0], Kind, title, $"{older.Model.File}, {older.Model.Date}, to {newer.Model.File}, {newer.Model.Date}",
            [
                $"{PageText.Count(comparison.Added.Length, "wall", "walls")} added", Invariant($"{comparison.Removed.Length} removed"), Invariant($"{comparison.Changed.Length} changed"),
                $"{PageText.Count(superseded.Count, "sheet", "sheets")} superseded",
            ]);
        frame.Navigation(_parts);
        html.Line($"<main>");
        Action[] sections = [() => Walls(html, comparison), () => Totals(html, comparison), () => Order(html, older, newer), () => Sheets(html, superseded), () => Cautions(html)];
        for (var i = 0; i < sections.Length; i++)
        {
            html.Line($"<section id=\"{_parts[i].Id}\" aria-labelledby=\"{_parts[i].Id}-h\"><h2 id=\"{_parts[i].Id}-h\">{_parts[i].Heading}</h2>");
            sections[i]();
            html.Line($"</section>");
        }

        html.Line($"</main>");
        frame.End();
    }

    private static void Walls(Html html, LayoutComparison comparison)
    {
        html.Line($"<p class=\"lead\">{(comparison.IsSame ? Same : WallsLead)}</p>");
        if (!comparison.IsSame)
        {
            PageTable.Write(
                html, "Walls that changed", null, [("Wall", false), ("Storey", false), ("What", false), .. _figures],
                [
                    .. comparison.Removed.Select(wall => Row(wall, new Markup("removed"), null)),
                    .. comparison.Added.Select(wall => Row(wall, new Markup("added"), null)),
                    .. comparison.Changed.Select(wall => Row(wall.New, Details(wall), wall.Cost)),
                ]);
        }
    }

    private static (Markup Attributes, IReadOnlyList<Markup> Cells) Row(WallIdentity wall, Markup what, PieceCounts? cost) => (Markup.None,
    [
        new Markup($"{Markup.Name(wall.Name).Text} <small>{HtmlText.Escaped(wall.GlobalId)}</small>"), Markup.Name(wall.Storey), what,
        .. cost is null ? Enumerable.Repeat(Markup.None, _figures.Length)
            : ((int[])[cost.Whole, cost.Cut, cost.SawCuts, cost.Lintels, cost.Bars]).Select(count => new Markup(More(count))),
    ]);

    private static Markup Details(WallChange wall) => Markup.Joined(
        "<br>", wall.Changes.Select(change => new Markup($"<b>{HtmlText.Escaped(change.What.Replace('-', ' '))}</b>: {HtmlText.Escaped(change.Detail)}")));

    private static void Totals(Html html, LayoutComparison comparison)
    {
        var (was, now) = (comparison.OldTotals, comparison.NewTotals);
        (string Name, int Was, int Now)[] rows =
        [
            ("walls laid out", was.Coursed, now.Coursed), ("blocks", was.Pieces, now.Pieces), ("whole", was.FullUnits, now.FullUnits), ("cut", was.PartUnits, now.PartUnits),
            ("saw cuts", was.Cuts, now.Cuts), ("lintels", was.Lintels, now.Lintels), ("bars", was.Cores, now.Cores),
        ];
        PageTable.Write(
            html, "All walls together", null, [("What", false), ("Before", true), ("After", true), ("More", true)],
            rows.Select(row => (Markup.None, (IReadOnlyList<Markup>)[new Markup(row.Name), Number(row.Was), Number(row.Now), new Markup(More(row.Now - row.Was))])));
    }

    private static void Order(Html html, Layout older, Layout newer)
    {
        html.Line($"<p class=\"lead\">{OrderLead}</p>");
        var lines = OrderDifference.Of(older, newer);
        if (!lines.IsEmpty)
        {
            PageTable.Write(
                html, "Lines that change", null, [("Item", false), ("Description", false), ("Width", true), ("Before", true), ("After", true), ("More", true), ("Unit", false)],
                lines.Select(line => (Markup.None, (IReadOnlyList<Markup>)
                [
                    new Markup(OrderItemWords.Of(line.Item)), new Markup(HtmlText.Escaped(line.What)), Number(line.Width), Number(line.Before), Number(line.After),
                    new Markup(More(line.After - line.Before)), new Markup(line.Unit),
                ])));
        }
    }

    private static void Sheets(Html html, IEnumerable<SetSheet> superseded)
    {
        html.Line($"<p class=\"lead\">{SheetsLead}</p>");
        PageTable.Write(
            html, "Superseded", null, [("Sheet", false), ("Of", false)],
            superseded.Select(sheet => (Markup.None, (IReadOnlyList<Markup>)[new Markup(HtmlText.Escaped(sheet.Number)), Markup.Name(sheet.Title)])));
    }

    private static void Cautions(Html html)
    {
        html.Line($"<ul>");
        foreach (var caution in PageText.Cautions)
        {
            html.Line($"<li>{caution}</li>");
        }

        html.Line($"</ul>");
    }

    private static Markup Number(double? value) => new(value is { } number ? number.ToString("0.###", CultureInfo.InvariantCulture) : string.Empty);

    private static string More(double? value) => value is { } number ? number.ToString("+0.###;-0.###;0", CultureInfo.InvariantCulture) : string.Empty;
}
