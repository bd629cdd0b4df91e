using System.Collections.Immutable;
using IfcCourser.Output.Sheets;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Support;

/// <summary>A small sheet with every kind of item, pen, hatch and text anchor, in a view and on the paper.</summary>
internal static class EveryItem
{
    public static Sheet Sheet { get; } = new(
        "Every item, Öl / Юг",
        new PaperSize("A5", 210, 148),
        UnitSystem.Metric,
        PenTable.Iso13567,
        Title,
        [new View("View", new DrawingScale(10, "1:10"), new Box(-50, -200, 1050, 700), new Point(10, 45), View())],
        Paper());

    private static TitleBlock Title => new()
    {
        LegalOwner = "Owner",
        IdentificationNumber = "E001",
        DateOfIssue = "2026-03-01",
        SheetNumber = "1/1",
        Project = "House, Süd / Юг",
        Client = "Client",
        Title = "Every item",
        ApprovalPerson = string.Empty,
        Creator = "IfcCourser",
        DocumentType = "Sample",
        Revision = "A",
        SupplementaryTitle = "Öl, Юг",
        DocumentStatus = "For review",
        Scale = "1:10",
        PaperSize = "A5",
    };

    private static ImmutableArray<SheetItem> View()
    {
        var box = new Box(0, 0, 400, 250);
        var attributes = ImmutableArray.Create(
            new BlockAttribute("MARK", "Mark", Pen.CutLength, new Point(200, 125), 3.5, TextAnchor.Middle, AttributeDisplay.Shown),
            new BlockAttribute("CUT", "How it is cut", Pen.Text, new Point(10, 10), 2.5, TextAnchor.Left, AttributeDisplay.Hidden));
        var block = new BlockDefinition("CUT-400X250", [PolylineItem.Rectangle(Pen.CutBlock, box)], attributes);
        return
        [
            new BlockItem(Pen.CutBlock, block, new Point(0, 0), ["A", "length"]),
            new BlockItem(Pen.CutBlock, block, new Point(450, 0), ["B", "none"]),
            new HatchItem(Pen.CutHatch, [box.Corners(), Box.At(box.Middle, 80, 60).Corners()], HatchKind.Cut),
            new HatchItem(Pen.LintelHatch, [new Box(0, 300, 400, 400).Corners()], HatchKind.Carries),
            new HatchItem(Pen.LintelHatch, [new Box(600, 550, 660, 650).Corners()], HatchKind.Formed),
            new HatchItem(Pen.ThisWall, [[new(450, 300), new(550, 300), new(500, 400)]], HatchKind.Solid),
            new LineItem(Pen.Core, new Point(650, 0), new Point(650, 400)),
            new PolylineItem(Pen.DesignedJamb, [new(700, 300), new(800, 300), new(800, 400)], PathEnd.Open),
            ArcItem.Circle(Pen.BuiltIn, new Point(700, 500), 40),
            new ArcItem(Pen.OuterEdge, new Point(850, 500), 60, 30, 300),
            new DimensionItem(
                DimensionKind.Single, DimensionAxis.Horizontal, new(0, 400), new(400, 400), 450, 0, new(200, 475), 0, string.Empty, "400"),
            new DimensionItem(
                DimensionKind.Running, DimensionAxis.Horizontal, new(0, 0), new(850, 0), -40, 0, new(850, -125), 90, "B1  ", "B1  850"),
            new DimensionItem(
                DimensionKind.Running, DimensionAxis.Vertical, new(900, 0), new(900, 250), 900, 0, new(960, 250), 0, string.Empty, "250"),
        ];
    }

    /// <summary>A sample of each pen, and of each way a text can stand.</summary>
    private static ImmutableArray<SheetItem> Paper()
    {
        var pens = Enum.GetValues<Pen>().Select(pen =>
            (SheetItem)new LineItem(pen, new Point(130, 138 - (4 * (int)pen)), new Point(150, 138 - (4 * (int)pen))));
        var texts = Enum.GetValues<TextAnchor>().SelectMany(anchor => new SheetItem[]
        {
            new TextItem(Pen.Text, new Point(184, 134 - (6 * (int)anchor)), "abc é Я", 2.5, anchor),
            new TextItem(Pen.Heading, new Point(20 + (12 * (int)anchor), 32), anchor.ToString(), 3, anchor, 90),
        });
        return [.. pens, .. texts, PolylineItem.Rectangle(Pen.Frame, new Box(5, 5, 205, 143))];
    }
}
