using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>A plan of a storey on a sheet.</summary>
internal static class StoreyPlan
{
    /// <summary>Larger scales make sheets that nobody can hold on a slab or beside a fork lift. Common practice, no source.</summary>
    private const int LargestScale = 48;

    /// <param name="number">Of the sheet.</param>
    /// <param name="draw">The plan at a scale.</param>
    /// <param name="panels">Beside it.</param>
    public static Sheet Compose(
        Layout layout, string number, string title, string documentType, Func<DrawingScale, Canvas> draw, ImmutableArray<Panel> panels, SheetContext context)
    {
        var units = layout.Rules.Catalog.Units;
        ImmutableArray<DrawingScale> scales = [.. DrawingScale.For(units).Where(scale => scale.Denominator >= LargestScale)];
        var fit = SheetFit.Of(context.Papers, scales, draw, panels);
        return fit.Assembled(SheetText.SheetName(number, title), PlanText.Plan, units, context, fit.Title(layout, null) with
        {
            IdentificationNumber = number,
            Title = title,
            DocumentType = documentType,
        });
    }
}
