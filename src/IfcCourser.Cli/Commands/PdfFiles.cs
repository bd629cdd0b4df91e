using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Cli.Commands;

/// <summary>One PDF for each set of sheets.</summary>
internal static class PdfFiles
{
    /// <summary>Writes the sets; the layout with a finding where the font can't set a character, or the first fault.</summary>
    /// <param name="name">Of the files, without extension.</param>
    public static Outcome<Layout> Add(OutputFolder folder, Layout layout, string name, Terminal terminal)
    {
        var missing = new List<MissingGlyph>();
        var about = new PdfSet(layout.Model.ProjectName ?? layout.Model.File, Author: null, layout.Model.Date);
        var storeys = layout.SetOut.Storeys.Where(SetOutSheet.IsNeeded).ToArray();
        (string Folder, int Count, IEnumerable<PdfPage> Pages)[] sets =
        [
            ("set-out", storeys.Length, storeys.Select(storey => new PdfPage(SetOutSheet.Compose(layout, storey), Section: null))),
            ("walls", layout.Walls.Length, WallPages(layout, terminal)),
        ];
        foreach (var set in sets.Where(set => set.Count > 0))
        {
            if (folder.Add($"{set.Folder}/{name}.pdf", stream => missing.AddRange(PdfWriter.Write(about, set.Pages, stream))) is { } fault)
            {
                return fault;
            }
        }

        return missing.Count == 0
            ? layout
            : layout with { Findings = layout.Findings.Add(new Finding(FindingCodes.GlyphMissing, Messages.GlyphsMissing(missing))) };
    }

    private static IEnumerable<PdfPage> WallPages(Layout layout, Terminal terminal) => layout.Walls.Select((wall, i) =>
    {
        terminal.Step(Messages.PrintingSheets(i + 1, layout.Walls.Length));
        return new PdfPage(WallSheet.Compose(layout, wall), wall.Identity.Storey);
    });
}
