using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Svg;

namespace IfcCourser.Output.Sheets.Sets;

/// <summary>
/// Which sheets of an older issue must be withdrawn: those that the newer set has not, or draws otherwise, of whatever kind. Both sets are drawn and compared, so that
/// what moved to another sheet with its neighbours is found as well; date, revision and place among all sheets do not count.
/// </summary>
public static class SupersededSheets
{
    /// <summary>None where no wall changed: a new export that numbers walls otherwise leaves the older set whole.</summary>
    /// <param name="papers">Sizes that both sets choose from, smallest first.</param>
    public static ImmutableArray<SetSheet> Of(Layout older, Layout newer, ImmutableArray<PaperSize> papers)
    {
        if (LayoutComparison.Of(older, newer).IsSame)
        {
            return [];
        }

        var now = Drawn(newer, papers).ToDictionary(sheet => sheet.Entry.Number, sheet => sheet.Picture, StringComparer.Ordinal);
        var was = Drawn(older with { Model = older.Model with { Date = newer.Model.Date }, Job = newer.Job }, papers);
        return [.. was.Where(sheet => sheet.Picture != now.GetValueOrDefault(sheet.Entry.Number)).Select(sheet => sheet.Entry)];
    }

    private static (SetSheet Entry, string Picture)[] Drawn(Layout layout, ImmutableArray<PaperSize> papers) =>
        [.. DrawingSet.Unplaced(layout, papers).AsParallel().AsOrdered().Select(entry => (entry, Picture(entry)))];

    private static string Picture(SetSheet entry)
    {
        using var stream = new MemoryStream();
        SvgWriter.Write(entry.Compose(), stream);
        return System.Text.Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
