using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>The TABLES section, with every standard entry.</summary>
internal static class DxfTables
{
    public const string TextStyleName = "SHEET";
    public const string StandardStyle = "Standard";

    /// <summary>A sans serif face that is found nearly everywhere and has Cyrillic and accented letters.</summary>
    private const string Font = "arial.ttf";

    public static DxfTags Write(DxfDocument document, Box model)
    {
        var tags = new DxfTags().Add(0, "SECTION").Add(2, "TABLES");
        Table(document, tags, "VPORT", [table => ActiveView(document, tags, table, model)]);
        Table(document, tags, "LTYPE",
        [
            table => DashPattern(document, tags, table, "ByBlock", []), table => DashPattern(document, tags, table, "ByLayer", []),
            .. Enum.GetValues<LineType>().Select(type => (Action<string>)(table =>
                DashPattern(document, tags, table, NameOf(type), LineTypes.Pattern(type)))),
        ]);
        Table(document, tags, "LAYER",
        [
            table => Layer(document, tags, table, "0", new PenStyle(Pen.Text, "0", 25, LineType.Continuous, 7, 0)),
            .. document.Pens.Styles.Select(style => (Action<string>)(table => Layer(document, tags, table, style.Layer, style))),
        ]);
        Table(document, tags, "STYLE",
        [
            table => TextStyle(tags, table, document.Handles.Next(), StandardStyle),
            table => TextStyle(tags, table, document.Tables.TextStyle, TextStyleName),
        ]);
        Table(document, tags, "VIEW", []);
        Table(document, tags, "UCS", []);
        Table(document, tags, "APPID", [table => Record(tags, table, "APPID", document.Handles.Next(), "AcDbRegAppTableRecord", "ACAD").Add(70, 0)]);
        DxfDimensionStyles.Write(document, tags);
        BlockRecords(document, tags);
        return tags.Add(0, "ENDSEC");
    }

    /// <summary>Names that readers with patterns of their own know.</summary>
    public static string NameOf(LineType type) => type switch
    {
        LineType.Dashed => "DASHED",
        LineType.Centre => "CENTER",
        LineType.LongDash => "DASHEDX2",
        _ => "Continuous",
    };

    public static DxfTags Record(DxfTags tags, string table, string type, string handle, string subclass, string name) => tags
        .Add(0, type).Add(5, handle).Add(330, table).Add(100, "AcDbSymbolTableRecord").Add(100, subclass).Add(2, name);

    private static void Table(DxfDocument document, DxfTags tags, string name, IReadOnlyCollection<Action<string>> records)
    {
        var handle = document.Handles.Next();
        tags.Add(0, "TABLE").Add(2, name).Add(5, handle).Add(330, "0").Add(100, "AcDbSymbolTable").Add(70, records.Count);
        foreach (var record in records)
        {
            record(handle);
        }

        tags.Add(0, "ENDTAB");
    }

    private static void ActiveView(DxfDocument document, DxfTags tags, string table, Box model)
    {
        const double ScreenRatio = 1.6;
        var height = Math.Max(model.Height, model.Width / ScreenRatio) * 1.05;
        Record(tags, table, "VPORT", document.Handles.Next(), "AcDbViewportTableRecord", "*Active").Add(70, 0)
            .AddFlat(10, default).AddFlat(11, new Point(1, 1)).AddFlat(12, model.Middle).AddFlat(13, default)
            .AddFlat(14, new Point(10, 10)).AddFlat(15, new Point(10, 10)).Add(16, 0.0).Add(26, 0.0).Add(36, 1.0).Add(17, default(Point))
            .Add(40, height).Add(41, ScreenRatio).Add(42, 50.0).Add(43, 0.0).Add(44, 0.0).Add(50, 0.0).Add(51, 0.0)
            .Add(71, 0).Add(72, 1000).Add(73, 1).Add(74, 3).Add(75, 0).Add(76, 0).Add(77, 0).Add(78, 0);
    }

    private static void DashPattern(DxfDocument document, DxfTags tags, string table, string name, ImmutableArray<double> dashes)
    {
        var factor = document.Units.PerMm;
        Record(tags, table, "LTYPE", document.Handles.Next(), "AcDbLinetypeTableRecord", name)
            .Add(70, 0).Add(3, string.Empty).Add(72, 65).Add(73, dashes.Length).Add(40, dashes.Sum(Math.Abs) * factor);
        foreach (var dash in dashes)
        {
            tags.Add(49, dash * factor).Add(74, 0);
        }
    }

    private static void Layer(DxfDocument document, DxfTags tags, string table, string name, PenStyle style)
    {
        Record(tags, table, "LAYER", document.Handles.Next(), "AcDbLayerTableRecord", name)
            .Add(70, 0).Add(62, style.Colour).Add(6, NameOf(style.Line));
        if (!style.IsPrinted)
        {
            tags.Add(290, 0);
        }

        tags.Add(370, style.Width).Add(390, document.Tables.PlotStyle);
    }

    private static void TextStyle(DxfTags tags, string table, string handle, string name) =>
        Record(tags, table, "STYLE", handle, "AcDbTextStyleTableRecord", name).Add(70, 0).Add(40, 0.0).Add(41, 1.0).Add(50, 0.0)
            .Add(71, 0).Add(42, 2.5).Add(3, Font).Add(4, string.Empty);

    private static void BlockRecords(DxfDocument document, DxfTags tags)
    {
        var table = document.Tables.BlockRecords;
        tags.Add(0, "TABLE").Add(2, "BLOCK_RECORD").Add(5, table).Add(330, "0").Add(100, "AcDbSymbolTable").Add(70, document.Blocks.Count);
        foreach (var block in document.Blocks)
        {
            Record(tags, table, "BLOCK_RECORD", block.Record, "AcDbBlockTableRecord", block.Name)
                .Add(340, block.Layout ?? "0").Add(70, block.Layout is null ? document.Units.InsUnits : 0).Add(280, 1).Add(281, 0);
        }

        tags.Add(0, "ENDTAB");
    }
}
