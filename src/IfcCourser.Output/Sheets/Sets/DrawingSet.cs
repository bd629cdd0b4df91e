using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Schedules;
using IfcCourser.Output.Sheets.SetOut;
using IfcCourser.Output.Sheets.Staging;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Sets;

/// <summary>
/// All sheets of a layout, numbered through: cover, set-out sheets, storey plans, wall sheets, details, schedules, storey poles, staging plans. A sheet's number keeps to what it
/// shows; its place among all is counted beside it.
/// </summary>
public static class DrawingSet
{
    /// <summary>In the order of the set; none where no wall is laid out.</summary>
    /// <param name="papers">Sizes to choose from, smallest first.</param>
    public static ImmutableArray<SetSheet> Of(Layout layout, ImmutableArray<PaperSize> papers) => Of(layout, papers, null, (i, count) => (i + 1, count));

    /// <summary>The set of a layout that is issued anew: sheets of changed walls, and plans of what changed in their courses, bear clouds around it.</summary>
    /// <inheritdoc cref="Of(Layout, ImmutableArray{PaperSize})"/>
    public static ImmutableArray<SetSheet> Of(Reissue issue, ImmutableArray<PaperSize> papers) => Of(issue.Layout, papers, issue, (i, count) => (i + 1, count));

    /// <summary>Each sheet as if it were the only one, so that sheets of two sets can be compared.</summary>
    internal static ImmutableArray<SetSheet> Unplaced(Layout layout, ImmutableArray<PaperSize> papers) => Of(layout, papers, null, (_, _) => (1, 1));

    /// <param name="place">From a sheet's index, from 0, and the count of sheets to what is printed.</param>
    private static ImmutableArray<SetSheet> Of(Layout layout, ImmutableArray<PaperSize> papers, Reissue? since, Func<int, int, (int Index, int Count)> place)
    {
        if (layout.Walls.IsEmpty)
        {
            return [];
        }

        var pens = PenTable.For(layout.Rules);
        ImmutableArray<SetSheet> sheets = [];
        Draft[] drafts =
        [
            Cover(layout, () => sheets), .. SetOuts(layout, since), .. StoreyPlans(layout, since), .. Walls(layout, papers, since), Details(layout), .. Schedules(layout, papers), .. StagingPlans(layout),
        ];
        sheets = [.. drafts.Select((draft, i) => (Draft: draft, Place: place(i, drafts.Length))).Select(one => Placed(one.Draft, new SheetContext(pens, papers, one.Place.Index, one.Place.Count)))];
        return sheets;
    }

    private static SetSheet Placed(Draft draft, SheetContext context) =>
        new(draft.Number, draft.Title, draft.DocumentType, draft.Section, draft.Folder, () => draft.Compose(context));

    private static Draft Cover(Layout layout, Func<ImmutableArray<SetSheet>> sheets) => new(
        CoverSheet.Number, CoverSheet.Title, CoverSheet.DocumentType, null, SetFolder.Walls, context => CoverSheet.Compose(layout, sheets(), context));

    private static IEnumerable<Draft> SetOuts(Layout layout, Reissue? since) => layout.SetOut.Storeys.Where(SetOutSheet.IsNeeded).Select((storey, i) => new Draft(
        SetOutText.Number(i + 1),
        storey.Storey ?? SheetText.UnnamedStorey,
        SetOutText.DocumentType,
        null,
        SetFolder.SetOut,
        context => SetOutSheet.Compose(layout, storey, context, since)));

    private static IEnumerable<Draft> StoreyPlans(Layout layout, Reissue? since)
    {
        var courses = from storey in layout.Walls.Select(wall => wall.Identity.Storey).Distinct(StringComparer.Ordinal)
                      from index in Enumerable.Range(0, 2)
                      where layout.Walls.Any(wall => string.Equals(wall.Identity.Storey, storey, StringComparison.Ordinal) && wall.Courses.Length > index)
                      select (Storey: storey, Index: index);
        return courses.Select((course, i) => new Draft(
            PlanText.Number(i + 1),
            PlanText.Title(course.Storey, course.Index),
            PlanText.DocumentType,
            course.Storey,
            SetFolder.Walls,
            context => PlanSheet.Compose(layout, course.Storey, course.Index, i + 1, context, since)));
    }

    private static IEnumerable<Draft> Walls(Layout layout, ImmutableArray<PaperSize> papers, Reissue? since) => WallPages.Of(layout, papers, since).Select(page => new Draft(
        page.Number,
        WallSheet.Title(page),
        SheetText.DocumentType,
        page.Views[0].Facts.Wall.Identity.Storey,
        SetFolder.Walls,
        context => WallSheet.Compose(layout, page, context)));

    private static Draft Details(Layout layout) => new(
        DetailText.Number(1), DetailText.Title, DetailText.DocumentType, null, SetFolder.Walls, context => DetailSheet.Compose(layout, context));

    private static IEnumerable<Draft> Schedules(Layout layout, ImmutableArray<PaperSize> papers)
    {
        var pages = ScheduleSheet.PagesOf(layout, papers);
        var poles = PolePage.Of(layout, papers);
        return Enumerable.Range(1, pages)
            .Select(page => new Draft(
                ScheduleText.Number(page),
                ScheduleText.Page(page, pages),
                ScheduleText.DocumentType,
                null,
                SetFolder.Walls,
                context => ScheduleSheet.Compose(layout, page, context)))
            .Concat(Enumerable.Range(1, poles.Length).Select(page => new Draft(
                ScheduleText.Number(pages + page),
                ScheduleText.PolesPage(page, poles.Length),
                ScheduleText.PolesType,
                null,
                SetFolder.Walls,
                context => PoleSheet.Compose(layout, poles, page, ScheduleText.Number(pages + page), context))));
    }

    private static IEnumerable<Draft> StagingPlans(Layout layout) => (layout.Order?.Staging ?? []).Select(pack => pack.Storey).Distinct(StringComparer.Ordinal).Select((storey, i) => new Draft(
        StagingText.Number(i + 1),
        StagingText.Title(storey),
        StagingText.DocumentType,
        storey,
        SetFolder.Walls,
        context => StagingSheet.Compose(layout, storey, i + 1, context)));

    private sealed record Draft(string Number, string Title, string DocumentType, string? Section, SetFolder Folder, Func<SheetContext, Sheet> Compose);
}
