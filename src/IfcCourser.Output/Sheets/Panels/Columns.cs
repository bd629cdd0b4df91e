namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Flows panels through columns of the paper.</summary>
internal static class Columns
{
    /// <summary>Placed items, or null where the columns are too few or too low.</summary>
    /// <param name="columns">Each as wide as a panel, in reading order, paper millimetres.</param>
    public static ImmutableArray<SheetItem>? Flow(IEnumerable<Panel> panels, IReadOnlyList<Box> columns)
    {
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        var (column, top) = (0, columns.Count > 0 ? columns[0].Top : 0);
        foreach (var panel in panels)
        {
            var row = 0;
            while (row < panel.Rows.Length)
            {
                if (column == columns.Count)
                {
                    return null;
                }

                var place = columns[column];
                if (top - panel.HeadHeight - panel.Rows[row].Height < place.Bottom)
                {
                    column++;
                    top = column < columns.Count ? columns[column].Top : 0;
                    continue;
                }

                foreach (var head in panel.Head)
                {
                    top = Put(head, place.Left, top);
                }

                for (; row < panel.Rows.Length && top - panel.Rows[row].Height >= place.Bottom; row++)
                {
                    top = Put(panel.Rows[row], place.Left, top);
                }
            }

            top -= Panel.Gap;
        }

        return items.ToImmutable();

        double Put(PanelRow placed, double left, double at)
        {
            items.AddRange(placed.Items.Select(item => item.MovedBy(new Point(left, at))));
            return at - placed.Height;
        }
    }
}
