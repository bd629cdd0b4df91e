using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Workbooks;

namespace IfcCourser.Output.Ordering;

/// <summary>The saw list with the walls' names.</summary>
internal static class SawSheet
{
    public static WorkbookSheet Of(Layout layout, OrderText text)
    {
        var rows = new SheetRows();
        var names = layout.Walls.ToDictionary(wall => wall.Identity.GlobalId, wall => wall.Identity.Label, StringComparer.Ordinal);
        rows.Title("Saw list", WorkbookWords.Saving(layout.Order!.Saw), WorkbookWords.SawHint);
        rows.Header(
            ("Storey", CellFormat.Text), ("Wall", CellFormat.Text), ("Course", CellFormat.Plain), ("Mark", CellFormat.Text), ("Piece", CellFormat.Text), ("Product", CellFormat.Text),
            ($"Width ({text.LengthUnit})", CellFormat.Plain), ($"Length ({text.LengthUnit})", CellFormat.Plain), ($"Height ({text.LengthUnit})", CellFormat.Plain), ("Angle (deg)", CellFormat.Plain), ("Cut", CellFormat.Text),
            ("Quantity", CellFormat.Plain), ("From unit", CellFormat.Text), ("Offcut used by", CellFormat.Text));
        foreach (var row in SawRow.Of(layout))
        {
            rows.Row(
                WorkbookCell.Of(row.Wall.Identity.Storey), WorkbookCell.Of(row.Wall.Identity.Label), WorkbookCell.Of(row.Course.Number, CellFormat.Whole), WorkbookCell.Of(row.Mark),
                WorkbookCell.Of(row.Piece.Id), WorkbookCell.Of(row.Unit.Product), WorkbookCell.Of(text.Measurable(row.Unit.Width), text.LengthFormat),
                WorkbookCell.Of(text.Measurable(row.Piece.Length), text.LengthFormat), WorkbookCell.Of(text.Measurable(row.Piece.Height), text.LengthFormat),
                WorkbookCell.Of(row.Angle is { } angle ? Math.Round(angle, 1) : null, CellFormat.OneDecimal), WorkbookCell.Of(JsonNames.Of(row.Piece.Cut)),
                WorkbookCell.Of(1.0, CellFormat.Whole), WorkbookCell.Of(row.FromUnit),
                WorkbookCell.Of(row.UsedBy is { } next ? (next.Wall == row.Wall.Identity.GlobalId ? next.Piece : $"{names[next.Wall]} {next.Piece}") : null));
        }

        rows.Total(
        [
            WorkbookCell.Of(WorkbookWords.Total, CellRole.Total), .. Enumerable.Repeat(WorkbookCell.Of(null, CellRole.Total), 10),
            rows.Sum(11, layout.Order.Saw.Pieces, CellFormat.Whole), WorkbookCell.Of(null, CellRole.Total), WorkbookCell.Of(null, CellRole.Total),
        ]);
        return rows.Sheet("Saw list", 16, 28, 8, 7, 9, 13, 9, 10, 10, 8, 14, 9, 12, 16);
    }
}
