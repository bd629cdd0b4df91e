using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>
/// The HEADER and CLASSES sections. The dimension variables repeat what the styles say for readers that look only here;
/// those can't turn single texts, so lying text (DIMTIH) serves the storey pole best.
/// </summary>
internal static class DxfHeader
{
    public static DxfTags Write(DxfDocument document, Box model, int scale)
    {
        var units = document.Units;
        var paper = units.PerMm;
        var tags = new DxfTags().Add(0, "SECTION").Add(2, "HEADER");
        Variable("$ACADVER").Add(1, "AC1024");
        Variable("$DWGCODEPAGE").Add(3, "ANSI_1252");
        Variable("$HANDSEED").Add(5, document.Handles.Seed);
        Variable("$INSBASE").Add(10, default(Point));
        Variable("$EXTMIN").Add(10, new Point(model.Left, model.Bottom));
        Variable("$EXTMAX").Add(10, new Point(model.Right, model.Top));
        Variable("$LIMMIN").AddFlat(10, new Point(model.Left, model.Bottom));
        Variable("$LIMMAX").AddFlat(10, new Point(model.Right, model.Top));
        Variable("$TEXTSTYLE").Add(7, DxfTables.TextStyleName);
        Variable("$CLAYER").Add(8, "0");
        Variable("$LTSCALE").Add(40, 1.0);
        Variable("$PSLTSCALE").Add(70, 0);
        Variable("$TILEMODE").Add(70, 1);
        Variable("$LUNITS").Add(70, units.LinearUnits);
        Variable("$LUPREC").Add(70, units.Precision);
        Variable("$AUNITS").Add(70, 0);
        Variable("$INSUNITS").Add(70, units.InsUnits);
        Variable("$MEASUREMENT").Add(70, units.Measurement);
        Variable("$LWDISPLAY").Add(290, 1);
        Variable("$DIMSTYLE").Add(2, DxfTables.StandardStyle);
        Variable("$DIMSCALE").Add(40, (double)scale);
        Variable("$DIMTXT").Add(40, DimensionItem.TextHeight * paper);
        Variable("$DIMASZ").Add(40, 2 * DimensionPicture.Stroke * paper);
        Variable("$DIMTSZ").Add(40, DimensionPicture.Stroke * paper);
        Variable("$DIMEXO").Add(40, DimensionPicture.Gap * paper);
        Variable("$DIMEXE").Add(40, DimensionPicture.Overrun * paper);
        Variable("$DIMGAP").Add(40, 0.8 * paper);
        Variable("$DIMTIH").Add(70, 1);
        Variable("$DIMTOH").Add(70, 1);
        Variable("$DIMTAD").Add(70, 1);
        Variable("$DIMLUNIT").Add(70, units.LinearUnits);
        Variable("$DIMDEC").Add(70, units.Precision);
        Variable("$DIMRND").Add(40, units.Rounding);
        Variable("$DIMZIN").Add(70, units.Zeros);
        Variable("$DIMFRAC").Add(70, 2);
        tags.Add(0, "ENDSEC").Add(0, "SECTION").Add(2, "CLASSES");
        Class(tags, "ACDBDICTIONARYWDFLT", "AcDbDictionaryWithDefault");
        Class(tags, "ACDBPLACEHOLDER", "AcDbPlaceHolder");
        return tags.Add(0, "ENDSEC");

        DxfTags Variable(string name) => tags.Add(9, name);
    }

    private static void Class(DxfTags tags, string name, string type) =>
        tags.Add(0, "CLASS").Add(1, name).Add(2, type).Add(3, "ObjectDBX Classes").Add(90, 0).Add(91, 1).Add(280, 0).Add(281, 0);
}
