using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>A view at a standard scale, with its panels, on a standard paper.</summary>
internal sealed record SheetFit(DrawingScale Scale, Canvas Canvas, Arrangement Arrangement)
{
    /// <summary>Characters of a calendar date: 2026-03-01.</summary>
    private const int IsoDay = 10;

    public PaperSize Paper => Arrangement.Paper;

    /// <summary>
    /// The largest scale whose paper is not the largest size, on the smallest paper that holds it; what is too long for every
    /// standard sheet takes the smallest scale on a roll that is as long as it takes.
    /// </summary>
    /// <param name="units">Decide which papers there are.</param>
    /// <param name="scales">Largest first.</param>
    /// <param name="draw">The view at a scale.</param>
    /// <param name="panels">Beside the view.</param>
    public static SheetFit Of(UnitSystem units, ImmutableArray<DrawingScale> scales, Func<DrawingScale, Canvas> draw, ImmutableArray<Panel> panels)
    {
        var papers = PaperSize.For(units);
        foreach (var scale in scales)
        {
            var canvas = draw(scale);
            var largest = scale.Denominator < DrawingScale.For(units)[1].Denominator ? papers.Length - 1 : papers.Length;
            var fit = papers.Take(largest).Select(paper => On(paper, scale, canvas, panels)).FirstOrDefault(a => a is not null);
            if (fit is not null)
            {
                return fit;
            }
        }

        return Elongated(papers[^1], scales[^1], draw(scales[^1]), panels);
    }

    /// <summary>The sheet with its frame and title block.</summary>
    public Sheet Assembled(string name, string view, UnitSystem units, PenTable pens, TitleBlock title)
    {
        var trimmed = PolylineItem.Rectangle(Pen.NotPrinted, new Box(0, 0, Paper.Width, Paper.Height));
        var frame = PolylineItem.Rectangle(Pen.Frame, Paper.Frame);
        return new Sheet(
            name,
            Paper,
            units,
            pens,
            title,
            [new View(view, Scale, Canvas.Extent, Arrangement.View, [.. Canvas.Items])],
            [trimmed, frame, .. Arrangement.Panels, TitleBlockDrawing.At(Arrangement.Title, title, units)]);
    }

    /// <summary>A title block with what all sheets of a run share.</summary>
    public TitleBlock Title(ModelFacts model, string? storey) => new()
    {
        LegalOwner = string.Empty,
        IdentificationNumber = string.Empty,
        DateOfIssue = model.Date.Length > IsoDay ? model.Date[..IsoDay] : model.Date,
        SheetNumber = string.Empty,
        Title = string.Empty,
        ApprovalPerson = string.Empty,
        Creator = SheetText.Creator,
        DocumentType = string.Empty,
        Revision = string.Empty,
        SupplementaryTitle = string.Join(", ", new[] { model.Siting.Label, model.ProjectName, storey }.Where(part => !string.IsNullOrEmpty(part))),
        DocumentStatus = SheetText.Status,
        Scale = Scale.Label,
        PaperSize = Paper.Name,
    };

    private static SheetFit? On(PaperSize paper, DrawingScale scale, Canvas canvas, ImmutableArray<Panel> panels)
    {
        var (width, height) = (canvas.Extent.Width / scale.Denominator, canvas.Extent.Height / scale.Denominator);
        return Arrangement.TryFit(paper, width, height, panels) is { } arrangement ? new SheetFit(scale, canvas, arrangement) : null;
    }

    private static SheetFit Elongated(PaperSize largest, DrawingScale scale, Canvas canvas, ImmutableArray<Panel> panels)
    {
        for (var times = 2; ; times++)
        {
            var paper = new PaperSize(
                string.Create(CultureInfo.InvariantCulture, $"{largest.Name} x {times}"), largest.Width * times, largest.Height * times);
            if (On(paper, scale, canvas, panels) is { } fit)
            {
                return fit;
            }
        }
    }
}
