using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>The mason's sheet of a wall, or of several that share it: every course, every block, every cut with its length.</summary>
public static class WallSheet
{
    /// <summary>A wall on a sheet of its own, at the largest standard scale whose paper is not the largest size.</summary>
    /// <param name="layout">The layout the wall belongs to: its storey is in the key plan.</param>
    /// <param name="wall">One of <paramref name="layout"/>'s walls.</param>
    public static Sheet Compose(Layout layout, WallLayout wall)
    {
        var context = SheetContext.Alone(layout);
        return Compose(layout, WallPage.Alone(new WallFacts(layout, wall), context.Papers), context);
    }

    /// <param name="context">Pens and the place in the set.</param>
    internal static Sheet Compose(Layout layout, WallPage page, SheetContext context)
    {
        var (title, views) = (Title(page), page.Views.Zip(page.At, (view, at) => new View(
            page.Views.Length == 1 ? SheetText.ElevationView : SheetText.ElevationOf(view.Facts.Number), page.Scale, view.Canvas.Extent, at, view.Canvas.Drawn())));
        var block = SheetFrame.Title(layout, page.Views[0].Facts.Wall.Identity.Storey) with
        {
            IdentificationNumber = page.Number,
            Title = title,
            DocumentType = SheetText.DocumentType,
            Scale = page.Scale.Label,
        };
        return SheetFrame.Assembled(SheetText.SheetName(page.Number, title), page.Paper, layout.Rules.Catalog.Units, context, block, [.. views], page.Panels);
    }

    /// <summary>The walls' names, each once; of a parted wall also which part.</summary>
    internal static string Title(WallPage page) => string.Join(", ", page.Walls.Select(wall => wall.Name).Distinct(StringComparer.Ordinal))
        + (page.Views[0].Facts.Stretch is { } stretch ? SheetText.Part(stretch.Index, stretch.Count) : string.Empty);
}
