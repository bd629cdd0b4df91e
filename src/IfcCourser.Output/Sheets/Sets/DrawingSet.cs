using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Output.Sheets.Panels;
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
        Func<IEnumerable<Draft>>[] sections =
        [
            () => SetOuts(layout, papers, since), () => StoreyPlans(layout, papers, since), () => Walls(layout, papers, since), () => Details(layout, papers), () => Schedules(layout, papers), () => StagingPlans(layout, papers),
        ];
        Draft[] inside = [.. sections.AsParallel().AsOrdered().Select(section => section().ToArray()).AsSequential().SelectMany(drafts => drafts)];
        Draft[] drafts = [.. Covers(layout, inside, papers, pens), .. inside];
        return [.. drafts.Select((draft, i) => (Draft: draft, Place: place(i, drafts.Length))).Select(one => Placed(one.Draft, new SheetContext(pens, papers, one.Place.Index, one.Place.Count)))];
    }

    private static SetSheet Placed(Draft draft, SheetContext context) =>
        new(draft.Number, draft.Title, draft.DocumentType, draft.Section, draft.Folder, () => draft.Compose(context));

    /// <summary>The cover's index names the sheets that it takes itself.</summary>
    private static IEnumerable<Draft> Covers(Layout layout, Draft[] inside, ImmutableArray<PaperSize> papers, PenTable pens)
    {
        for (var count = 1; ; count++)
        {
            var entries = Of(papers[^1], [.. Enumerable.Repeat(ImmutableArray<SheetItem>.Empty, count)]).Concat(inside).Select(draft => Placed(draft, new SheetContext(pens, papers, 1, 1)));
            var (paper, pages) = CoverSheet.Pages(layout, [.. entries], papers);
            if (pages.Length <= count)
            {
                return Of(paper, pages);
            }
        }

        IEnumerable<Draft> Of(PaperSize paper, ImmutableArray<ImmutableArray<SheetItem>> pages) => WithFurther(
            new Draft(CoverSheet.Number, CoverSheet.Title, CoverSheet.DocumentType, null, SetFolder.Walls, context => CoverSheet.Compose(layout, paper, pages[0], context)), layout, paper, pages[1..]);
    }

    private static IEnumerable<Draft> SetOuts(Layout layout, ImmutableArray<PaperSize> papers, Reissue? since) => Plans(
        layout.SetOut.Storeys,
        storey => SetOutSheet.Pages(layout, storey, papers, since),
        (storey, page) => new Draft(page.Number, page.Title, SetOutText.DocumentType, null, SetFolder.SetOut, context => SetOutSheet.Compose(layout, storey, page, context)),
        layout);

    private static IEnumerable<Draft> StoreyPlans(Layout layout, ImmutableArray<PaperSize> papers, Reissue? since)
    {
        var courses = from storey in layout.Storeys
                      from index in Enumerable.Range(0, 2)
                      where storey.Any(wall => wall.Courses.Length > index)
                      select (Storey: storey.Key, Index: index);
        return Plans(
            courses.Select((course, i) => (course.Storey, course.Index, Number: i + 1)),
            course => PlanSheet.Pages(layout, course.Storey, course.Index, course.Number, papers, since),
            (course, page) => new Draft(page.Number, page.Title, PlanText.DocumentType, course.Storey, SetFolder.Walls, context => StoreyPlan.Sheet(layout, page, null, PlanText.DocumentType, context)),
            layout);
    }

    /// <summary>The sheets of some plans, each followed by those with tables that it has no room for.</summary>
    private static IEnumerable<Draft> Plans<T>(IEnumerable<T> plans, Func<T, ImmutableArray<PlanPage>> pages, Func<T, PlanPage, Draft> draft, Layout layout) =>
        plans.AsParallel().AsOrdered().Select(plan => (Plan: plan, Pages: pages(plan))).AsEnumerable()
            .SelectMany(one => one.Pages.SelectMany(page => WithFurther(draft(one.Plan, page), layout, page.Fit.Paper, page.Fit.Further)));

    private static IEnumerable<Draft> Walls(Layout layout, ImmutableArray<PaperSize> papers, Reissue? since) => WallPages.Of(layout, papers, since).SelectMany(page => WithFurther(
        new Draft(page.Number, WallSheet.Title(page), SheetText.DocumentType, page.Views[0].Facts.Wall.Identity.Storey, SetFolder.Walls, context => WallSheet.Compose(layout, page, context)),
        layout,
        page.Paper,
        page.Further));

    /// <summary>A sheet, then its tables that go on: W003, W003.T1, W003.T2.</summary>
    private static IEnumerable<Draft> WithFurther(Draft sheet, Layout layout, PaperSize paper, ImmutableArray<ImmutableArray<SheetItem>> further) => further.Select((items, i) =>
    {
        var (number, title) = (SheetText.FurtherNumber(sheet.Number, i + 1), SheetText.Further(sheet.Title, i + 1, further.Length));
        var block = SheetFrame.Title(layout, sheet.Section) with { IdentificationNumber = number, Title = title, DocumentType = sheet.DocumentType };
        return sheet with
        {
            Number = number,
            Title = title,
            Compose = context => PanelPages.Sheet(SheetText.SheetName(number, title), paper, items, layout.Rules.Catalog.Units, context, block),
        };
    }).Prepend(sheet);

    private static IEnumerable<Draft> Details(Layout layout, ImmutableArray<PaperSize> papers)
    {
        var pages = DetailSheet.Pages(layout, papers);
        return pages.SelectMany((page, i) => WithFurther(
            new Draft(DetailText.Number(i + 1), DetailText.Page(i + 1, pages.Length), DetailText.DocumentType, null, SetFolder.Walls, context => DetailSheet.Compose(layout, page, i + 1, pages.Length, context)),
            layout,
            page.Paper,
            page.Further));
    }

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

    private static IEnumerable<Draft> StagingPlans(Layout layout, ImmutableArray<PaperSize> papers) => Plans(
        (layout.Order?.Staging ?? []).Select(pack => pack.Storey).Distinct(StringComparer.Ordinal).Select((storey, i) => (Storey: storey, Number: i + 1)),
        plan => StagingSheet.Pages(layout, plan.Storey, plan.Number, papers),
        (plan, page) => new Draft(page.Number, page.Title, StagingText.DocumentType, plan.Storey, SetFolder.Walls, context => StoreyPlan.Sheet(layout, page, null, StagingText.DocumentType, context)),
        layout);

    private sealed record Draft(string Number, string Title, string DocumentType, string? Section, SetFolder Folder, Func<SheetContext, Sheet> Compose);
}
