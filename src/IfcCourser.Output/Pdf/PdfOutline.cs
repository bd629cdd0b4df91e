using System.Globalization;
using static IfcCourser.Output.Pdf.PdfSyntax;

namespace IfcCourser.Output.Pdf;

/// <summary>The bookmarks (ISO 32000-1, 12.3.3): a tree of sections and sheets.</summary>
internal static class PdfOutline
{
    /// <summary>Writes the tree; the number of its root.</summary>
    /// <param name="pages">Title, section and number of each page's object.</param>
    public static int Write(PdfFile file, IReadOnlyList<(string Title, string? Section, int Page)> pages)
    {
        // Pages without a section each stand alone; the others under their section, where its first page stands.
        var tops = pages.Select((page, i) => (page, Key: page.Section ?? string.Create(CultureInfo.InvariantCulture, $"\0{i}")))
            .GroupBy(entry => entry.Key, entry => entry.page, StringComparer.Ordinal)
            .Select(group => group.First().Section is { } section
                ? new Bookmark(section, group.First().Page, [.. group.Select(page => new Bookmark(page.Title, page.Page, []))])
                : new Bookmark(group.First().Title, group.First().Page, []))
            .ToArray();
        var root = file.Reserve();
        file.Write(root, $"<< /Type /Outlines {Children(file, root, tops)} >>");
        return root;
    }

    /// <summary>Writes the bookmarks of one parent; the entries that lead to them. All are shown open.</summary>
    private static string Children(PdfFile file, int parent, IReadOnlyList<Bookmark> bookmarks)
    {
        var numbers = bookmarks.Select(_ => file.Reserve()).ToArray();
        for (var i = 0; i < numbers.Length; i++)
        {
            var bookmark = bookmarks[i];
            var children = bookmark.Children.Count == 0 ? string.Empty : Children(file, numbers[i], bookmark.Children);
            var before = i > 0 ? $"/Prev {Reference(numbers[i - 1])} " : string.Empty;
            var after = i + 1 < numbers.Length ? $"/Next {Reference(numbers[i + 1])} " : string.Empty;
            file.Write(
                numbers[i],
                $"<< /Title {Text(bookmark.Title)} /Parent {Reference(parent)} {before}{after}/Dest [{Reference(bookmark.Page)} /Fit] {children} >>");
        }

        var open = bookmarks.Sum(bookmark => 1 + bookmark.Children.Count);
        return $"/First {Reference(numbers[0])} /Last {Reference(numbers[^1])} /Count {Number(open)}";
    }

    private sealed record Bookmark(string Title, int Page, IReadOnlyList<Bookmark> Children);
}
