using System.Globalization;
using System.Text;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>
/// Writes sheets as one DXF drawing, R2010, UTF-8: views in real size in model space, one below the other, and a layout with locked viewports
/// for each sheet. Knows items and pens, nothing of walls.
/// </summary>
public static class DxfWriter
{
    /// <summary>
    /// Between the views of model space, and over the first of them: readers that mix paper into model space
    /// then show the papers above the views.
    /// </summary>
    private const double ViewGap = 2000;

    /// <summary>The same sheets give the same bytes: handles count up from one.</summary>
    /// <param name="sheets">At least one; all in the same units and with the same pens, their names different.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(IReadOnlyList<Sheet> sheets, Stream stream)
    {
        if (sheets.Count == 0 || sheets.Any(sheet => sheet.Units != sheets[0].Units || sheet.Pens != sheets[0].Pens))
        {
            throw new ArgumentException("One drawing takes at least one sheet, all of the same units and pens.", nameof(sheets));
        }

        var document = new DxfDocument(sheets[0].Pens, new DxfUnits(sheets[0].Units));
        var blocks = sheets.Select((_, i) => document.Space(PaperSpaceName(i))).ToArray();
        var layouts = sheets.Zip(blocks, (sheet, block) => DxfLayout.Begin(document, sheet, block)).ToArray();
        var model = WriteSheets(document, layouts);
        var objects = DxfObjects.Write(document, layouts, model);
        var body = DxfBlocks.Write(document, layouts[0].Block);
        var tables = DxfTables.Write(document, model);
        var header = DxfHeader.Write(document, model, sheets.SelectMany(sheet => sheet.Views).FirstOrDefault()?.Scale.Denominator ?? 1);
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        foreach (var part in new[] { header, tables, body, objects })
        {
            part.WriteTo(writer);
        }

        new DxfTags().Add(0, "EOF").WriteTo(writer);
    }

    /// <summary>The extents of model space, drawing units.</summary>
    private static Box WriteSheets(DxfDocument document, IReadOnlyList<DxfLayout> layouts)
    {
        var factor = document.Units.PerMm;
        var extents = new List<Box>();
        foreach (var layout in layouts)
        {
            var number = 2;
            foreach (var view in layout.Sheet.Views)
            {
                var above = extents.Count == 0 ? 0 : extents[^1].Bottom;
                var offset = new Point(0, above - ViewGap - view.Window.Top);
                extents.Add(view.Window.Moved(offset));
                var space = new DxfSpace(document.Model.Record, IsPaper: false, offset, factor, view.Scale.Denominator);
                WriteItems(document, document.Model.Entities, space, view.Items);
                layout.AddView(document, view, offset, number++);
            }

            var paper = new DxfSpace(layout.Block.Record, IsPaper: true, default, factor, 1);
            WriteItems(document, layout.Block.Entities, paper, layout.Sheet.Items);
        }

        return (extents.Count == 0 ? new Box(0, 0, 1, 1) : extents.Aggregate((a, b) => a.With(b))).Scaled(factor);
    }

    private static void WriteItems(DxfDocument document, DxfTags tags, DxfSpace space, ImmutableArray<SheetItem> items)
    {
        foreach (var item in items)
        {
            DxfEntities.Write(document, tags, space, item);
        }
    }

    private static string PaperSpaceName(int index) =>
        index == 0 ? "*Paper_Space" : string.Create(CultureInfo.InvariantCulture, $"*Paper_Space{index - 1}");
}
