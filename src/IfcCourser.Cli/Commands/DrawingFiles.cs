using System.Collections.Immutable;
using System.Text;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Dxf;
using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Svg;

namespace IfcCourser.Cli.Commands;

/// <summary>The drawing set: one PDF and one DXF for each of its two folders, or a DXF a sheet, and an SVG a sheet.</summary>
internal sealed class DrawingFiles(OutputFolder folder, Layout layout, DrawingChoice choice, string name)
{
    /// <summary>Writes the set; the layout with a finding where the font can't set a character, or the first fault.</summary>
    public Outcome<Layout> Add(Terminal terminal)
    {
        var papers = choice.Paper.For(layout);
        var sheets = choice.Issue is { } issue ? DrawingSet.Of(issue, papers) : DrawingSet.Of(layout, papers);
        terminal.Step(Messages.DrawingSheets(sheets.Length));
        (SetSheet Entry, Sheet Sheet)[] drawn = [.. sheets.AsParallel().AsOrdered().Select(sheet => (sheet, sheet.Compose()))];
        var missing = new List<MissingGlyph>();
        var fault = drawn.GroupBy(sheet => sheet.Entry.Folder)
            .Select(set => Add(FolderName(set.Key), [.. set], missing))
            .FirstOrDefault(fault => fault is not null);
        return fault is not null ? fault
            : missing.Count == 0 ? layout
            : layout with { Findings = layout.Findings.Add(new Finding(FindingCodes.GlyphMissing, Messages.GlyphsMissing(missing))) };
    }

    private Fault? Add(string subfolder, (SetSheet Entry, Sheet Sheet)[] set, List<MissingGlyph> missing)
    {
        var isDrawn = choice.Formats.Contains(LayoutFiles.Dxf) || choice.Formats.Contains(LayoutFiles.Svg);
        var dxf = isDrawn && !choice.DxfPerSheet ? Task.Run(() => Dxf(set)) : null;
        return (choice.Formats.Contains(LayoutFiles.Pdf) ? folder.Add($"{subfolder}/{name}.pdf", stream => missing.AddRange(Pdf(set, stream))) : null)
            ?? (isDrawn ? Drawings(subfolder, set, dxf) : null);
    }

    /// <summary>In memory, while the PDF is written: the two take most of the time of a set.</summary>
    private static MemoryStream Dxf((SetSheet Entry, Sheet Sheet)[] set)
    {
        var stream = new MemoryStream();
        DxfWriter.Write([.. set.Select(sheet => sheet.Sheet)], stream);
        return stream;
    }

    private Fault? Drawings(string subfolder, (SetSheet Entry, Sheet Sheet)[] set, Task<MemoryStream>? dxf)
    {
        var whole = dxf is null ? null : folder.Add($"{subfolder}/{name}.dxf", stream =>
        {
            using var drawn = dxf.GetAwaiter().GetResult();
            drawn.WriteTo(stream);
        });
        return whole ?? set.Select(sheet => OneSheet($"{subfolder}/{FileName(sheet.Entry)}", sheet.Sheet)).FirstOrDefault(fault => fault is not null);
    }

    private Fault? OneSheet(string path, Sheet sheet) =>
        (choice.DxfPerSheet ? folder.Add(path + ".dxf", stream => DxfWriter.Write([sheet], stream)) : null)
        ?? folder.Add(path + ".svg", stream => SvgWriter.Write(sheet, stream));

    private ImmutableArray<MissingGlyph> Pdf((SetSheet Entry, Sheet Sheet)[] set, Stream stream) => PdfWriter.Write(
        new PdfSet(layout.Job.Project ?? layout.Model.ProjectName ?? layout.Model.File, layout.Job.Author, layout.Model.Date),
        set.Select(sheet => new PdfPage(sheet.Sheet, sheet.Entry.Section)),
        stream);

    private static string FolderName(SetFolder set) => set == SetFolder.SetOut ? "set-out" : "walls";

    /// <summary>The sheet's number, and what file systems take of its title: runs of letters, digits and _ joined by -.</summary>
    private static string FileName(SetSheet sheet)
    {
        const int LongestName = 40;
        var text = new StringBuilder(sheet.Number.Replace(' ', '_'));
        var isApart = true;
        foreach (var rune in sheet.Title.EnumerateRunes().Take(LongestName))
        {
            var isKept = Rune.IsLetterOrDigit(rune) || rune.Value is '_';
            text.Append(isKept && isApart ? "-" : string.Empty).Append(isKept ? rune.ToString() : string.Empty);
            isApart = !isKept;
        }

        return text.ToString();
    }
}
