namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Packs panels into columns of the paper: each whole into the first column of its page that holds it, else broken over several, the next page's too.</summary>
internal sealed class Columns
{
    private readonly IReadOnlyList<Box> _columns;
    private readonly double[] _tops;
    private readonly double _pageWidth;
    private readonly ImmutableArray<SheetItem>.Builder _items = ImmutableArray.CreateBuilder<SheetItem>();

    private Columns(IReadOnlyList<Box> columns, double pageWidth)
    {
        (_columns, _pageWidth) = (columns, pageWidth);
        _tops = [.. columns.Select(column => column.Top)];
    }

    /// <summary>Placed items, or null where the columns are too few or too low.</summary>
    /// <param name="panels">In order of weight.</param>
    /// <param name="columns">Each as wide as a panel, in reading order, paper millimetres.</param>
    /// <param name="pageWidth">From one page to the next where the columns are those of several.</param>
    public static ImmutableArray<SheetItem>? Pack(IEnumerable<Panel> panels, IReadOnlyList<Box> columns, double pageWidth = double.MaxValue)
    {
        var packing = new Columns(columns, pageWidth);
        return panels.All(packing.Place) ? packing._items.ToImmutable() : null;
    }

    private bool Place(Panel panel)
    {
        var whole = panel.HeadHeight + panel.Rows.Sum(row => row.Height);
        var least = panel.HeadHeight + (panel.Rows.IsEmpty ? 0 : panel.Rows[0].Height);
        var page = Enumerable.Range(0, _columns.Count).Where(i => _tops[i] - least >= _columns[i].Bottom).Select(PageOf).FirstOrDefault();
        for (var i = 0; i < _columns.Count && PageOf(i) <= page; i++)
        {
            if (_tops[i] - whole >= _columns[i].Bottom)
            {
                Put(i, panel, 0, panel.Rows.Length);
                return true;
            }
        }

        return Break(panel);
    }

    private int PageOf(int column) => (int)(_columns[column].Left / _pageWidth);

    private bool Break(Panel panel)
    {
        var row = 0;
        for (var i = 0; i < _columns.Count && row < panel.Rows.Length; i++)
        {
            var (end, room) = (row, _tops[i] - panel.HeadHeight - _columns[i].Bottom);
            while (end < panel.Rows.Length && panel.Rows[end].Height <= room)
            {
                room -= panel.Rows[end++].Height;
            }

            if (end > row)
            {
                Put(i, panel, row, end);
                row = end;
            }
        }

        return row == panel.Rows.Length;
    }

    private void Put(int column, Panel panel, int from, int to)
    {
        foreach (var row in panel.Head.Concat(panel.Rows.Skip(from).Take(to - from)))
        {
            _items.AddRange(row.Items.Select(item => item.MovedBy(new Point(_columns[column].Left, _tops[column]))));
            _tops[column] -= row.Height;
        }

        _tops[column] -= Panel.Gap;
    }
}
