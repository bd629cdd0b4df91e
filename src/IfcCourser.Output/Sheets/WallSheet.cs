using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>The mason's sheet of one wall: every course, every block, every cut with its length.</summary>
public static class WallSheet
{
    /// <summary>Characters of a calendar date: 2026-03-01.</summary>
    private const int IsoDay = 10;

    /// <summary>
    /// Composes the sheet at the largest standard scale whose paper is not the largest size, on the smallest paper that holds it;
    /// longer walls take a smaller scale.
    /// </summary>
    /// <param name="layout">The layout the wall belongs to: its storey is in the key plan.</param>
    /// <param name="wall">One of <paramref name="layout"/>'s walls.</param>
    public static Sheet Compose(Layout layout, WallLayout wall) =>
        Compose(layout, wall, PenTable.For(layout.Rules.Catalog.Units));

    /// <inheritdoc cref="Compose(Layout, WallLayout)"/>
    /// <param name="pens">Which layer names the sheet takes.</param>
    public static Sheet Compose(Layout layout, WallLayout wall, PenTable pens)
    {
        var facts = new WallFacts(layout, wall);
        var panels = WallPanels.Of(facts);
        var papers = PaperSize.For(facts.Text.Units);
        foreach (var scale in DrawingScale.For(facts.Text.Units))
        {
            var canvas = Drawn(facts, scale);
            var largest = scale.Denominator < DrawingScale.For(facts.Text.Units)[1].Denominator ? papers.Length - 1 : papers.Length;
            var (width, height) = (canvas.Extent.Width / scale.Denominator, canvas.Extent.Height / scale.Denominator);
            var fit = papers.Take(largest).Select(paper => Arrangement.TryFit(paper, width, height, panels)).FirstOrDefault(a => a is not null);
            if (fit is not null)
            {
                return Assembled(facts, pens, scale, canvas, fit);
            }
        }

        return Elongated(facts, pens, panels);
    }

    /// <summary>A wall too long for every standard sheet: the smallest scale on a roll that is as long as it takes.</summary>
    private static Sheet Elongated(WallFacts facts, PenTable pens, ImmutableArray<Panel> panels)
    {
        var scale = DrawingScale.For(facts.Text.Units)[^1];
        var canvas = Drawn(facts, scale);
        var largest = PaperSize.For(facts.Text.Units)[^1];
        var (width, height) = (canvas.Extent.Width / scale.Denominator, canvas.Extent.Height / scale.Denominator);
        for (var times = 2; ; times++)
        {
            var paper = new PaperSize(
                string.Create(CultureInfo.InvariantCulture, $"{largest.Name} x {times}"), largest.Width * times, largest.Height * times);
            if (Arrangement.TryFit(paper, width, height, panels) is { } fit)
            {
                return Assembled(facts, pens, scale, canvas, fit);
            }
        }
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

    private static Sheet Assembled(WallFacts facts, PenTable pens, DrawingScale scale, Canvas canvas, Arrangement fit)
    {
        var title = Title(facts, scale, fit.Paper);
        var view = new View(SheetText.ElevationView, scale, canvas.Extent, fit.View, [.. canvas.Items]);
        var trimmed = PolylineItem.Rectangle(Pen.NotPrinted, new Box(0, 0, fit.Paper.Width, fit.Paper.Height));
        var frame = PolylineItem.Rectangle(Pen.Frame, fit.Paper.Frame);
        return new Sheet(
            SheetText.SheetName(facts.Number, facts.Name),
            fit.Paper,
            facts.Text.Units,
            pens,
            title,
            [view],
            [trimmed, frame, .. fit.Panels, TitleBlockDrawing.At(fit.Title, title, facts.Text.Units)]);
    }

    private static TitleBlock Title(WallFacts facts, DrawingScale scale, PaperSize paper)
    {
        var model = facts.Layout.Model;
        return new TitleBlock
        {
            LegalOwner = string.Empty,
            IdentificationNumber = SheetText.WallNumber(facts.Number),
            DateOfIssue = model.Date.Length > IsoDay ? model.Date[..IsoDay] : model.Date,
            SheetNumber = string.Create(CultureInfo.InvariantCulture, $"{facts.Layout.Walls.IndexOf(facts.Wall) + 1}/{facts.Layout.Walls.Length}"),
            Title = facts.Name,
            ApprovalPerson = string.Empty,
            Creator = SheetText.Creator,
            DocumentType = SheetText.DocumentType,
            Revision = string.Empty,
            SupplementaryTitle = string.Join(", ", new[] { model.ProjectName, facts.Wall.Identity.Storey }.Where(part => !string.IsNullOrEmpty(part))),
            DocumentStatus = SheetText.Status,
            Scale = scale.Label,
            PaperSize = paper.Name,
        };
    }
}
