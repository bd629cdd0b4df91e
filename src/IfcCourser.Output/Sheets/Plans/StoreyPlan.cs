using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>Plans of a storey on sheets.</summary>
internal static class StoreyPlan
{
    /// <summary>Larger scales make sheets that nobody can hold on a slab or beside a fork lift. Common practice, no source.</summary>
    private const int LargestScale = 48;

    /// <summary>Blocks of a first course can be told apart: a block of 600 mm is 6 mm long, a wall of 200 mm as thick as a pencil's line is wide four times over. Common practice, no source.</summary>
    private const int LeastScale = 100;

    /// <summary>Of plans that are never parted: packs and their marks, as large as they are. Common practice, no source.</summary>
    private const int LeastOfWhole = 200;

    /// <summary>A plan in more parts than this is no plan any more: walls stand far apart.</summary>
    private const int MostParts = 40;

    /// <summary>More parts are not tried to give crowded numbers more room: walls that close to each other stay crowded.</summary>
    private const int MostForRoom = 9;

    /// <summary>
    /// One sheet where a paper holds the plan at a scale that can be read, with no text over another and with tables on further sheets where they must be; else as few parts as that takes.
    /// What can't be parted falls to a smaller scale, then to a roll.
    /// </summary>
    /// <param name="drawing">The whole plan where the part is null.</param>
    /// <param name="ground">Null where the plan is never parted.</param>
    /// <param name="aim">What is kept where not all can be.</param>
    public static ImmutableArray<PlanPage> Pages(
        string number, string title, UnitSystem units, ImmutableArray<PaperSize> papers, Func<PlanPart?, PlanDrawing> drawing, PlanGround? ground, PlanAim aim)
    {
        ImmutableArray<DrawingScale> scales = [.. DrawingScale.For(units).Where(scale => scale.Denominator >= LargestScale)];
        ImmutableArray<DrawingScale> legible = [.. scales.Where(scale => scale.Denominator <= (ground is null ? LeastOfWhole : LeastScale))];
        var whole = drawing(null);
        return Held(Crowding.Refused) ?? Held(Crowding.Borne) ?? [new PlanPage(number, title, SheetFit.Of(papers, scales, whole.Draw, whole.Panels))];

        ImmutableArray<PlanPage>? Held(Crowding crowding) =>
            Whole(crowding) is { } fit ? [new PlanPage(number, title, fit)]
            : ground is null ? null
            : legible.Reverse().Select(scale => Parted(number, title, papers, scale, drawing, ground, crowding)).FirstOrDefault(parts => parts is not null);

        SheetFit? Whole(Crowding crowding) => (aim == PlanAim.Tables ? [] : legible)
            .Select(scale => SheetFit.Flowing(papers, [scale], whole.Draw, whole.Panels, crowding)).FirstOrDefault(fit => fit is { Arrangement.Panels.IsEmpty: false })
            ?? SheetFit.Flowing(papers, legible, whole.Draw, whole.Panels, crowding);
    }

    /// <summary>A sheet of a plan.</summary>
    /// <param name="storey">In the title block; null where the title says it.</param>
    public static Sheet Sheet(Layout layout, PlanPage page, string? storey, string documentType, SheetContext context) =>
        page.Fit.Assembled(SheetText.SheetName(page.Number, page.Title), PlanText.Plan, layout.Rules.Catalog.Units, context, page.Fit.Title(layout, storey) with
        {
            IdentificationNumber = page.Number,
            Title = page.Title,
            DocumentType = documentType,
        });

    private static ImmutableArray<PlanPage>? Parted(
        string number, string title, ImmutableArray<PaperSize> papers, DrawingScale scale, Func<PlanPart?, PlanDrawing> drawing, PlanGround ground, Crowding crowding)
    {
        var divisions = from count in Enumerable.Range(2, (crowding == Crowding.Refused ? MostForRoom : MostParts) - 1)
                        from columns in Enumerable.Range(1, count)
                        where count % columns == 0
                        select ground.Parts(columns, count / columns);
        return divisions.Where(parts => parts.All(part => MayFit(part, ground, papers, scale))).Select(parts => Pages(parts)).FirstOrDefault(pages => pages is not null);

        ImmutableArray<PlanPage>? Pages(ImmutableArray<PlanPart> parts)
        {
            var pages = ImmutableArray.CreateBuilder<PlanPage>();
            foreach (var part in parts)
            {
                var drawn = drawing(part);
                if (SheetFit.Flowing(papers, [scale], drawn.Draw, [.. drawn.Panels.Take(1), PartKey.Of(ground, parts, part, number), .. drawn.Panels.Skip(1)], crowding) is not { } fit)
                {
                    return null;
                }

                pages.Add(parts.Length == 1 ? new PlanPage(number, title, fit) : new PlanPage(PlanText.Part(number, part.Index), title + SheetText.Part(part.Index, part.Count), fit));
            }

            return pages.ToImmutable();
        }
    }

    /// <summary>Whether the walls alone have room, before they are drawn.</summary>
    private static bool MayFit(PlanPart part, PlanGround ground, ImmutableArray<PaperSize> papers, DrawingScale scale)
    {
        var (window, extent, room) = (part.Window, ground.Extent, Arrangement.SpaceOf(papers[^1]));
        return Math.Min(window.Right, extent.Right) - Math.Max(window.Left, extent.Left) < room.Width * scale.Denominator
            && Math.Min(window.Top, extent.Top) - Math.Max(window.Bottom, extent.Bottom) < room.Height * scale.Denominator;
    }
}
