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
    public static ImmutableArray<SetSheet> Of(Layout layout, ImmutableArray<PaperSize> papers)
    {
        if (layout.Walls.IsEmpty)
        {
            return [];
        }

        var pens = PenTable.For(layout.Rules);
        ImmutableArray<SetSheet> sheets = [];
        var drafts = SetOuts(layout).Concat(StoreyPlans(layout)).Concat(Walls(layout, papers)).Append(Details(layout)).Concat(Schedules(layout, papers)).Concat(StagingPlans(layout)).Prepend(Cover(layout, () => sheets)).ToArray();
        sheets = [.. drafts.Select((draft, i) => Placed(draft, new SheetContext(pens, papers, i + 1, drafts.Length)))];
        return sheets;
    }

    private static SetSheet Placed(Draft draft, SheetContext context) =>
        new(draft.Number, draft.Title, draft.DocumentType, draft.Section, draft.Folder, () => draft.Compose(context));

    private static Draft Cover(Layout layout, Func<ImmutableArray<SetSheet>> sheets) => new(
        CoverSheet.Number, CoverSheet.Title, CoverSheet.DocumentType, null, SetFolder.Walls, context => CoverSheet.Compose(layout, sheets(), context));

    private static IEnumerable<Draft> SetOuts(Layout layout) => layout.SetOut.Storeys.Where(SetOutSheet.IsNeeded).Select((storey, i) => new Draft(
        SetOutText.Number(i + 1),
        storey.Storey ?? SheetText.UnnamedStorey,
        SetOutText.DocumentType,
        null,
        SetFolder.SetOut,
        context => SetOutSheet.Compose(layout, storey, context)));

    private static IEnumerable<Draft> StoreyPlans(Layout layout)
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
            context => PlanSheet.Compose(layout, course.Storey, course.Index, i + 1, context)));
    }

    private static IEnumerable<Draft> Walls(Layout layout, ImmutableArray<PaperSize> papers) => WallPages.Of(layout, papers).Select(page => new Draft(
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
