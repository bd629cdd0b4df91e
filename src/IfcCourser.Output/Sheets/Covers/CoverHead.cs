using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Covers;

/// <summary>The large lines at the top of a cover.</summary>
internal static class CoverHead
{
    private const double Inset = 4;

    public static IEnumerable<SheetItem> Of(Layout layout, PaperSize paper)
    {
        var left = paper.Frame.Left + Inset;
        var width = paper.Frame.Width - (2 * Inset);
        (string Text, double Height, double Down)[] lines =
        [
            (layout.Job.Project ?? layout.Model.ProjectName ?? layout.Model.File, 10, 18),
            (CoverText.Subject, 5, 29),
            (string.Join(", ", new[] { layout.Job.Client, SheetText.Day(layout.Model.Date) }.Where(part => !string.IsNullOrEmpty(part))), 3.5, 37),
        ];
        return lines.Select(line => new TextItem(
            Pen.Heading, new Point(left, paper.Frame.Top - line.Down), TextMetrics.Fit(line.Text, line.Height, width), line.Height));
    }
}
