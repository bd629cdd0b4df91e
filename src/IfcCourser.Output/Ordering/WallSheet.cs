using IfcCourser.Layouts;
using IfcCourser.Output.Workbooks;

namespace IfcCourser.Output.Ordering;

/// <summary>What each wall takes, a row for each.</summary>
internal static class WallSheet
{
    private static readonly ImmutableArray<(string Name, ImmutableArray<OrderItem> Items)> _columns =
    [
        ("Whole units", [OrderItem.FullUnit]), ("Part units", [OrderItem.PartUnit]), ("Trough units", [OrderItem.TroughUnit]), ("Cored units", [OrderItem.CoredUnit]),
        ("Units to saw", [OrderItem.CutUnit]), ("Lintels", [OrderItem.Lintel, OrderItem.FormedLintel]), ("Joint mortar", [OrderItem.JointMortar]),
        ("Levelling mortar", [OrderItem.LevellingMortar]), ("Grout, concrete", [OrderItem.Grout, OrderItem.Concrete]), ("Bars of the schedule", [OrderItem.Bar, OrderItem.BeamBar, OrderItem.CornerBar]), ("Ties", [OrderItem.Tie]),
    ];

    public static WorkbookSheet Of(Layout layout, OrderText text)
    {
        var (order, rows) = (layout.Order!, new SheetRows());
        rows.Title("By wall", WorkbookWords.NetOnly);
        rows.Header(
        [
            ("Storey", CellFormat.Text), ("Wall", CellFormat.Text), ("GlobalId", CellFormat.Text), ($"Width ({text.LengthUnit})", CellFormat.Plain),
            .. _columns.Select(column => (column.Name + Unit(column.Items, text), CellFormat.Plain)), ("Pieces sawn", CellFormat.Plain),
        ]);
        var sums = new double[_columns.Length + 1];
        var walls = layout.Walls.ToDictionary(wall => wall.Identity.GlobalId, StringComparer.Ordinal);
        foreach (var group in order.Walls)
        {
            var wall = walls[group.Name!];
            double[] amounts = [.. _columns.Select(column => Amount(group, column.Items, text)), wall.Courses.Sum(course => course.Pieces.Count(piece => piece.Cut != Cuts.None))];
            rows.Row(
            [
                WorkbookCell.Of(wall.Identity.Storey), WorkbookCell.Of(wall.Identity.Label), WorkbookCell.Of(wall.Identity.GlobalId),
                WorkbookCell.Of(text.Number(wall.Frame.Thickness), text.LengthFormat), .. amounts.Select((amount, i) => WorkbookCell.Of(amount == 0 ? null : amount, Format(i, text))),
            ]);
            sums = [.. sums.Zip(amounts, (sum, amount) => sum + amount)];
        }

        rows.Total(
        [
            WorkbookCell.Of(WorkbookWords.Total, CellRole.Total), .. Enumerable.Repeat(WorkbookCell.Of(null, CellRole.Total), 3),
            .. sums.Select((sum, i) => rows.Sum(i + 4, sum, Format(i, text))),
        ]);
        return rows.Sheet("By wall", [16, 28, 26, 10, .. Enumerable.Repeat(10.0, _columns.Length + 1)]);
    }

    private static double Amount(OrderGroup group, ImmutableArray<OrderItem> items, OrderText text) => group.Lines
        .Where(line => items.Contains(line.Key.Item))
        .Sum(line => text.Exact(line.Key, line.Net)!.Value);

    private static string Unit(ImmutableArray<OrderItem> items, OrderText text) => Key(items) is { Unit: QuantityUnit.Litre } key ? $" ({text.Unit(key)})" : string.Empty;

    private static CellFormat Format(int column, OrderText text) => column < _columns.Length ? text.Format(Key(_columns[column].Items)) : CellFormat.Whole;

    private static OrderKey Key(ImmutableArray<OrderItem> items) => new(
        items[0], string.Empty, items[0] is OrderItem.JointMortar or OrderItem.LevellingMortar or OrderItem.Grout ? QuantityUnit.Litre : QuantityUnit.Piece);
}
