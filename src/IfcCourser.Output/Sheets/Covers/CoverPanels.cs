using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Covers;

/// <summary>What a cover tells: index, issues, job, what was laid out, what waits for an answer, notes, cautions.</summary>
internal static class CoverPanels
{
    public static ImmutableArray<Panel> Of(Layout layout, ImmutableArray<SetSheet> sheets)
    {
        Panel[] panels =
        [
            Index(sheets), Issues(layout), Job(layout), Walls(layout), Openings(layout), Skipped(layout), Letters(sheets), .. StoreyKey.Of(layout), Panels.Legend.Of([.. layout.Walls.Select(wall => new WallFacts(layout, wall))]),
            WordList.Of(SheetText.Notes, CoverText.Notes(layout)), Cautions.Panel,
        ];
        return [.. panels.Where(panel => !panel.Rows.IsEmpty)];
    }

    private static Panel Index(ImmutableArray<SetSheet> sheets) => Table.Of(
        CoverText.Index,
        ["", "Sheet", "Title", "Kind"],
        2,
        sheets.Select((sheet, i) => ImmutableArray.Create(
            (i + 1).ToString(CultureInfo.InvariantCulture),
            sheet.Number,
            sheet.Section is { } storey && !sheet.Title.Contains(storey, StringComparison.Ordinal) ? $"{sheet.Title}, {storey}" : sheet.Title,
            sheet.DocumentType)));

    private static Panel Issues(Layout layout) => Table.Of(
        CoverText.Issues,
        ["Rev.", "Date", "What", "By"],
        2,
        layout.Job.Revisions.IsEmpty
            ? [["-", SheetText.Day(layout.Model.Date), CoverText.NoIssue, ""]]
            : layout.Job.Revisions.Select(revision => ImmutableArray.Create(revision.Mark, revision.Date, revision.What, revision.By)));

    private static Panel Job(Layout layout)
    {
        (string Name, string? Value)[] rows =
        [
            ("Project", layout.Job.Project ?? layout.Model.ProjectName), ("Client", layout.Job.Client), ("Author", layout.Job.Author),
            ("Checked by", layout.Job.CheckedBy), ("Date", SheetText.Day(layout.Model.Date)), ("Model", $"{layout.Model.File} ({layout.Model.Schema})"),
            ("Fingerprint", layout.Model.Sha256[..Math.Min(16, layout.Model.Sha256.Length)]),
        ];
        return Table.Of(CoverText.Job, ["", ""], 1, rows.Where(row => !string.IsNullOrEmpty(row.Value)).Select(row => ImmutableArray.Create(row.Name, row.Value!)));
    }

    private static Panel Walls(Layout layout)
    {
        var totals = LayoutTotals.Of(layout);
        (string Name, int Count)[] rows =
        [
            ("Walls of the model", totals.Walls), ("laid out", totals.Coursed), ("Blocks laid uncut", totals.FullUnits), ("Blocks sawn", totals.PartUnits),
            ("Lintels", totals.Lintels), ("Bars", totals.Cores),
        ];
        return Table.Of(CoverText.Walls, ["What", "No"], 0, rows.Select(row => ImmutableArray.Create(row.Name, row.Count.ToString(CultureInfo.InvariantCulture))));
    }

    private static Panel Openings(Layout layout)
    {
        var text = new SheetLengths(layout.Rules.Catalog.Units);
        var moved = from wall in layout.Walls
                    from pair in wall.Openings.Zip(OpeningTags.Of(wall.Openings))
                    where pair.First.Placed != pair.First.Design
                    select ImmutableArray.Create(WallNumbers.Sheet(layout, wall), SheetText.Moved(pair.Second, pair.First, text).Replace("; awaits the designer's consent", string.Empty, StringComparison.Ordinal));
        return Table.Of(CoverText.Openings, ["Wall", "Opening"], 1, moved);
    }

    private static Panel Skipped(Layout layout) => Table.Of(
        CoverText.Skipped,
        ["Wall", "Why"],
        1,
        layout.Skipped.Where(wall => wall.Reason.Code != Findings.FindingCodes.NotSelected)
            .Select(wall => ImmutableArray.Create(TextMetrics.Fit(wall.Identity.Label, Table.TextHeight, Panel.Width / 2), wall.Reason.Message)));

    private static Panel Letters(ImmutableArray<SetSheet> sheets) => Table.Of(
        CoverText.Letters,
        ["", "Kind of sheet"],
        1,
        CoverText.Kinds.Where(kind => sheets.Any(sheet => sheet.Number.StartsWith(kind.Letter, StringComparison.Ordinal)))
            .Select(kind => ImmutableArray.Create(kind.Letter, kind.Meaning)));
}
