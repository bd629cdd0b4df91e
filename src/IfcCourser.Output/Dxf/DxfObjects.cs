using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>The OBJECTS section: dictionaries, plot style, a LAYOUT with plot settings for each sheet.</summary>
internal static class DxfObjects
{
    public static DxfTags Write(DxfDocument document, IReadOnlyList<DxfLayout> layouts, Box model)
    {
        var (groups, settings) = (document.Handles.Next(), document.Handles.Next());
        var handles = document.Tables;
        var tags = new DxfTags().Add(0, "SECTION").Add(2, "OBJECTS");
        Dictionary(tags, handles.Root, "0",
        [
            ("ACAD_GROUP", groups), ("ACAD_LAYOUT", handles.Layouts), ("ACAD_PLOTSETTINGS", settings), ("ACAD_PLOTSTYLENAME", handles.PlotStyles),
        ]);
        Dictionary(tags, groups, handles.Root, []);
        Dictionary(tags, settings, handles.Root, []);
        Dictionary(tags, handles.Layouts, handles.Root,
            [("Model", document.Model.Layout!), .. layouts.Select(layout => (DxfText.Name(layout.Sheet.Name), layout.Block.Layout!))]);
        tags.Add(0, "ACDBDICTIONARYWDFLT").Add(5, handles.PlotStyles).Add(330, handles.Root).Add(100, "AcDbDictionary").Add(281, 1)
            .Add(3, "Normal").Add(350, handles.PlotStyle).Add(100, "AcDbDictionaryWithDefault").Add(340, handles.PlotStyle);
        tags.Add(0, "ACDBPLACEHOLDER").Add(5, handles.PlotStyle).Add(330, handles.PlotStyles);
        ModelLayout(document, tags, model);
        for (var i = 0; i < layouts.Count; i++)
        {
            SheetLayout(document, tags, layouts[i], i + 1);
        }

        return tags.Add(0, "ENDSEC");
    }

    private static void Dictionary(DxfTags tags, string handle, string owner, IEnumerable<(string Name, string Handle)> entries)
    {
        tags.Add(0, "DICTIONARY").Add(5, handle).Add(330, owner).Add(100, "AcDbDictionary").Add(281, 1);
        foreach (var (name, entry) in entries)
        {
            tags.Add(3, name).Add(350, entry);
        }
    }

    private static void ModelLayout(DxfDocument document, DxfTags tags, Box model)
    {
        const int IsModel = 1024;
        var paper = PaperSize.For(document.Units.System)[0];
        PlotSettings(document, tags, document.Model.Layout!, paper, IsModel);
        Layout(tags, "Model", 0, model, document.Model.Record);
    }

    private static void SheetLayout(DxfDocument document, DxfTags tags, DxfLayout layout, int order)
    {
        const int PrintWidthsAndStyles = 4 + 128 + 512;
        var paper = layout.Sheet.Paper;
        PlotSettings(document, tags, layout.Block.Layout!, paper, PrintWidthsAndStyles);
        Layout(tags, DxfText.Name(layout.Sheet.Name), order, new Box(0, 0, paper.Width, paper.Height).Scaled(document.Units.PerMm), layout.Block.Record)
            .Add(331, layout.Viewport);
    }

    /// <summary>Printed one to one without margins; sizes here are always millimetres. 72: paper units, 75: scale 1:1.</summary>
    private static void PlotSettings(DxfDocument document, DxfTags tags, string handle, PaperSize paper, int flags) => tags
        .Add(0, "LAYOUT").Add(5, handle).Add(330, document.Tables.Layouts).Add(100, "AcDbPlotSettings")
        .Add(1, string.Empty).Add(2, string.Empty).Add(4, paper.Name).Add(6, string.Empty)
        .Add(40, 0.0).Add(41, 0.0).Add(42, 0.0).Add(43, 0.0).Add(44, paper.Width).Add(45, paper.Height)
        .Add(46, 0.0).Add(47, 0.0).Add(48, 0.0).Add(49, 0.0).Add(140, 0.0).Add(141, 0.0).Add(142, 1.0).Add(143, 1.0)
        .Add(70, flags).Add(72, document.Units.IsInch ? 0 : 1).Add(73, 0).Add(74, 5).Add(7, string.Empty).Add(75, 16).Add(147, 1.0)
        .Add(148, 0.0).Add(149, 0.0);

    private static DxfTags Layout(DxfTags tags, string name, int order, Box extent, string record) => tags
        .Add(100, "AcDbLayout").Add(1, name).Add(70, 1).Add(71, order)
        .AddFlat(10, new Point(extent.Left, extent.Bottom)).AddFlat(11, new Point(extent.Right, extent.Top)).Add(12, default(Point))
        .Add(14, new Point(extent.Left, extent.Bottom)).Add(15, new Point(extent.Right, extent.Top)).Add(146, 0.0)
        .Add(13, default(Point)).Add(16, new Point(1, 0)).Add(17, new Point(0, 1)).Add(76, 0).Add(330, record);
}
