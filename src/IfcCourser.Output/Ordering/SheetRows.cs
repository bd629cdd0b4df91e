using IfcCourser.Output.Workbooks;

namespace IfcCourser.Output.Ordering;

/// <summary>Gathers the rows of a sheet: title and notes, headers, a table, totals under it.</summary>
internal sealed class SheetRows
{
    private readonly List<ImmutableArray<WorkbookCell>> _rows = [];
    private int _header;
    private int _last;

    /// <summary>Number of the row that comes next.</summary>
    public int Next => _rows.Count + 1;

    /// <summary>Number of the table's first row.</summary>
    public int First => _header + 1;

    /// <summary>Number of its last one.</summary>
    public int Last => _last;

    public void Title(string text, params ReadOnlySpan<string> notes)
    {
        _rows.Add([WorkbookCell.Of(text, CellRole.Title)]);
        foreach (var note in notes)
        {
            _rows.Add([WorkbookCell.Of(note, CellRole.Note)]);
        }
    }

    /// <param name="names">Of the columns; those of numbers stand over their right end.</param>
    public void Header(params IEnumerable<(string Name, CellFormat Format)> names)
    {
        _rows.Add([.. names.Select(name => new WorkbookCell(CellRole.Header, name.Format) { Text = name.Name })]);
        _header = _rows.Count;
        _last = _header;
    }

    public void Row(params IEnumerable<WorkbookCell> cells)
    {
        _rows.Add([.. cells]);
        _last = _rows.Count;
    }

    /// <summary>Under the table, set off by an empty row: a filter must not take it for a part of the table.</summary>
    public void Total(params IEnumerable<WorkbookCell> cells)
    {
        _rows.Add([]);
        _rows.Add([.. cells]);
    }

    /// <summary>The sum of a column of the table.</summary>
    public WorkbookCell Sum(int column, double value, CellFormat format)
    {
        var name = WorkbookSheet.Column(column);
        return _last == _header
            ? WorkbookCell.Of(0.0, format, CellRole.Total)
            : WorkbookCell.Reckoned(FormattableString.Invariant($"SUM({name}{First}:{name}{_last})"), value, format, CellRole.Total);
    }

    public WorkbookSheet Sheet(string name, params ReadOnlySpan<double> widths) => new(name, [.. widths], [.. _rows], _header, _last);
}
