using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>A sheet's paper space: its block and the viewports in it.</summary>
/// <param name="Viewport">Handle of the paper's own viewport.</param>
internal sealed record DxfLayout(Sheet Sheet, DxfBlock Block, string Viewport)
{
    /// <summary>Zoom locked (16384), always enabled (32768), symbol of the axes as usual (96).</summary>
    private const int LockedFlags = 16384 + 32768 + 96;

    /// <summary>The first viewport of a layout has number 1 and shows the paper itself.</summary>
    public static DxfLayout Begin(DxfDocument document, Sheet sheet, DxfBlock block)
    {
        var paper = new DxfSpace(block.Record, IsPaper: true, default, document.Units.PerMm, 1);
        var size = new Box(0, 0, sheet.Paper.Width, sheet.Paper.Height);
        var handle = document.Handles.Next();
        Window(document, block.Entities, paper, handle, 1, size, size.Middle * paper.PerMm, size.Height * 1.05 * paper.PerMm);
        return new DxfLayout(sheet, block, handle);
    }

    /// <summary>A locked window at a view's scale.</summary>
    /// <param name="offset">Where the view's origin lies in model space, millimetres.</param>
    public void AddView(DxfDocument document, View view, Point offset, int number)
    {
        var paper = new DxfSpace(Block.Record, IsPaper: true, default, document.Units.PerMm, 1);
        var centre = (view.Window.Middle + offset) * paper.PerMm;
        Window(
            document, Block.Entities, paper, document.Handles.Next(), number, view.PaperBox, centre, view.Window.Height * paper.PerMm);
    }

    private static void Window(
        DxfDocument document, DxfTags tags, DxfSpace paper, string handle, int number, Box box, Point centre, double height) =>
        DxfEntities.Begin(document, tags, paper, "VIEWPORT", Pen.NotPrinted, handle).Add(100, "AcDbViewport")
            .Add(10, paper.Point(box.Middle)).Add(40, box.Width * paper.PerMm).Add(41, box.Height * paper.PerMm)
            .Add(68, number).Add(69, number).AddFlat(12, centre).AddFlat(13, default)
            .AddFlat(14, new Point(10, 10)).AddFlat(15, new Point(10, 10)).Add(16, 0.0).Add(26, 0.0).Add(36, 1.0).Add(17, default(Point))
            .Add(42, 50.0).Add(43, 0.0).Add(44, 0.0).Add(45, height).Add(50, 0.0).Add(51, 0.0).Add(72, 1000)
            .Add(90, number == 1 ? 32768 + 96 : LockedFlags).Add(1, string.Empty).Add(281, 0).Add(71, 1).Add(74, 0)
            .Add(110, default(Point)).Add(111, new Point(1, 0)).Add(112, new Point(0, 1)).Add(79, 0).Add(146, 0.0).Add(170, 0);
}
