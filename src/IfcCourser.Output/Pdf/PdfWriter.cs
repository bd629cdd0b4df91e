using System.Security.Cryptography;
using IfcCourser.Output.Sheets;
using static IfcCourser.Output.Pdf.PdfSyntax;

namespace IfcCourser.Output.Pdf;

/// <summary>
/// Writes sheets as one PDF 1.7 file (ISO 32000-1), each a page of its true size, with bookmarks, page labels and an embedded font. Knows items
/// and pens, nothing of walls.
/// </summary>
public static class PdfWriter
{
    /// <summary>The same sheets give the same bytes.</summary>
    /// <param name="pages">At least one. Taken one by one: of a large set only one sheet need be in memory.</param>
    /// <param name="stream">Left open.</param>
    /// <returns>Characters of the sheets that the font can't set, in the order they were met.</returns>
    public static ImmutableArray<MissingGlyph> Write(PdfSet set, IEnumerable<PdfPage> pages, Stream stream)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var file = new PdfFile(stream, hash);
        var (tree, fontNumber, font) = (file.Reserve(), file.Reserve(), new EmbeddedFont());
        var bookmarks = new List<(string Title, string? Section, int Page)>();
        var labels = new List<string>();
        foreach (var (sheet, section) in pages)
        {
            var content = file.AddStream(PageContent.Of(sheet, font));
            var page = file.Add(
                $"<< /Type /Page /Parent {Reference(tree)} {PageContent.SizeOf(sheet.Paper)} "
                + $"/Resources << /Font << /F {Reference(fontNumber)} >> >> /Contents {Reference(content)} >>");
            labels.Add($"{Number(bookmarks.Count)} << /P {Text(sheet.Title.IdentificationNumber)} >>");
            bookmarks.Add((sheet.Name, section, page));
        }

        if (bookmarks.Count == 0)
        {
            throw new ArgumentException("A file takes at least one sheet.", nameof(pages));
        }

        file.Write(tree, $"<< /Type /Pages /Count {Number(bookmarks.Count)} /Kids [{string.Join(' ', bookmarks.Select(entry => Reference(entry.Page)))}] >>");
        font.WriteTo(file, fontNumber);
        file.End(Catalog(file, tree, PdfOutline.Write(file, bookmarks), labels), Info(file, set));
        return [.. font.Missing];
    }

    /// <summary>Opens with the bookmarks shown; a print dialog begins with the true size, for drawings are to scale.</summary>
    private static int Catalog(PdfFile file, int tree, int outline, List<string> labels) => file.Add(
        $"<< /Type /Catalog /Pages {Reference(tree)} /Outlines {Reference(outline)} /PageMode /UseOutlines /Lang (en) "
        + $"/ViewerPreferences << /DisplayDocTitle true /PrintScaling /None >> /PageLabels << /Nums [{string.Join(' ', labels)}] >> >>");

    private static int Info(PdfFile file, PdfSet set)
    {
        var author = set.Author is { } name ? $" /Author {Text(name)}" : string.Empty;
        var date = Date(set.Date) is { } stamp ? $" /CreationDate {stamp} /ModDate {stamp}" : string.Empty;
        return file.Add($"<< /Title {Text(set.Title)}{author} /Creator {Text(SheetText.Creator)} /Producer {Text(SheetText.Creator)}{date} >>");
    }
}
