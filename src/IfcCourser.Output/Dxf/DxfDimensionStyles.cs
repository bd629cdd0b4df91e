using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>The DIMSTYLE table: a style for each view scale and kind of dimension, sizes in paper units.</summary>
internal static class DxfDimensionStyles
{
    public static void Write(DxfDocument document, DxfTags tags)
    {
        var table = document.Handles.Next();
        tags.Add(0, "TABLE").Add(2, "DIMSTYLE").Add(5, table).Add(330, "0").Add(100, "AcDbSymbolTable")
            .Add(70, document.DimensionStyles.Count + 1).Add(100, "AcDbDimStyleTable").Add(71, 0);
        Style(document, tags, table, DxfTables.StandardStyle, 1, DimensionKind.Single);
        foreach (var ((scale, kind), name) in document.DimensionStyles)
        {
            Style(document, tags, table, name, scale, kind);
        }

        tags.Add(0, "ENDTAB");
    }

    /// <summary>
    /// Running dimensions draw no first extension line (DIMSE1) and set their text in the line of the second; single ones
    /// have it over the dimension line (DIMTAD). Text that was moved drags no leader (DIMTMOVE 2).
    /// </summary>
    private static void Style(DxfDocument document, DxfTags tags, string table, string name, int scale, DimensionKind kind)
    {
        var (units, paper) = (document.Units, document.Units.PerMm);
        var isRunning = kind == DimensionKind.Running;
        tags.Add(0, "DIMSTYLE").Add(105, document.Handles.Next()).Add(330, table)
            .Add(100, "AcDbSymbolTableRecord").Add(100, "AcDbDimStyleTableRecord").Add(2, name).Add(70, 0)
            .Add(40, (double)scale).Add(41, 2 * DimensionPicture.Stroke * paper).Add(42, DimensionPicture.Gap * paper).Add(43, 7 * paper)
            .Add(44, DimensionPicture.Overrun * paper).Add(45, units.Rounding).Add(46, 0.0)
            .Add(73, 0).Add(74, 0).Add(75, isRunning ? 1 : 0).Add(76, 0).Add(77, isRunning ? 0 : 1).Add(78, units.Zeros)
            .Add(140, DimensionItem.TextHeight * paper).Add(141, 0.0).Add(142, DimensionPicture.Stroke * paper)
            .Add(144, 1.0).Add(147, 0.8 * paper).Add(172, 1).Add(271, units.Precision).Add(272, units.Precision)
            .Add(276, 2).Add(277, units.LinearUnits).Add(278, 46).Add(279, 2)
            .Add(340, document.Tables.TextStyle).Add(371, -2).Add(372, -2);
    }
}
