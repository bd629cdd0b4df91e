namespace IfcCourser.Output.Workbooks;

/// <summary>A sheet of a workbook: rows of notes, one of headers, rows of a table.</summary>
/// <param name="Name">Unique, at most 31 characters, none of them []:*?/\.</param>
/// <param name="Widths">Of the columns, in characters.</param>
/// <param name="Rows">All rows; the header is the row of that number.</param>
/// <param name="Header">Number of the header row, from 1; rows down to it stand still and are printed on each page.</param>
/// <param name="LastRow">Of the table under the header, without totals; where it is below the header, the table has filters.</param>
internal sealed record WorkbookSheet(
    string Name, ImmutableArray<double> Widths, ImmutableArray<ImmutableArray<WorkbookCell>> Rows, int Header, int LastRow)
{
    /// <summary>A, B, ... Z, AA, ... for 0, 1, ...</summary>
    public static string Column(int index) => index < 26 ? ((char)('A' + index)).ToString() : Column((index / 26) - 1) + Column(index % 26);
}
