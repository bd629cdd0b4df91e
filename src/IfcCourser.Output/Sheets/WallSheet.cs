using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>The mason's sheet of one wall: every course, every block, every cut with its length.</summary>
public static class WallSheet
{
    /// <summary>
    /// Composes the sheet at the largest standard scale whose paper is not the largest size, on the smallest paper that holds it;
    /// longer walls take a smaller scale.
    /// </summary>
    /// <param name="layout">The layout the wall belongs to: its storey is in the key plan.</param>
    /// <param name="wall">One of <paramref name="layout"/>'s walls.</param>
    public static Sheet Compose(Layout layout, WallLayout wall) =>
        Compose(layout, wall, SheetContext.Alone(layout));

    /// <inheritdoc cref="Compose(Layout, WallLayout)"/>
    /// <param name="context">Pens, papers and the place in the set.</param>
    public static Sheet Compose(Layout layout, WallLayout wall, SheetContext context)
    {
        var facts = new WallFacts(layout, wall);
        var units = facts.Text.Units;
        var fit = SheetFit.Of(context.Papers, DrawingScale.For(units), scale => Drawn(facts, scale), WallPanels.Of(facts));
        return fit.Assembled(SheetText.SheetName(facts.Number, facts.Name), SheetText.ElevationView, units, context, Title(facts, fit));
    }

    private static Canvas Drawn(WallFacts facts, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        Elevation.Draw(canvas, facts);
        Walls.Runs.Draw(canvas, facts);
        Heights.Draw(canvas, facts);
        Strips.Draw(canvas, facts);
        return canvas;
    }

    private static TitleBlock Title(WallFacts facts, SheetFit fit) => fit.Title(facts.Layout, facts.Wall.Identity.Storey) with
    {
        IdentificationNumber = SheetText.WallNumber(facts.Number),
        Title = facts.Name,
        DocumentType = SheetText.DocumentType,
    };
}
