using System.Collections.Immutable;
using IfcCourser.Findings;

namespace IfcCourser.Slabs;

/// <summary>The header of a readings file: which column stands where, and its unit, as in <c>x_mm</c>, <c>z (ft)</c> or <c>rod [in]</c>.</summary>
internal sealed class ReadingsHeader
{
    private static readonly ImmutableArray<(ReadingColumn Column, string[] Names)> _names =
    [
        (ReadingColumn.Point, ["point", "pt", "no", "number", "id"]),
        (ReadingColumn.X, ["x"]),
        (ReadingColumn.Y, ["y"]),
        (ReadingColumn.Easting, ["easting", "east", "e"]),
        (ReadingColumn.Northing, ["northing", "north", "n"]),
        (ReadingColumn.Station, ["station", "s"]),
        (ReadingColumn.Offset, ["offset", "t"]),
        (ReadingColumn.Height, ["z", "elevation", "height", "level"]),
        (ReadingColumn.Rod, ["rod", "staff"]),
        (ReadingColumn.Instrument, ["hi", "instrument"]),
        (ReadingColumn.Code, ["code"]),
        (ReadingColumn.Wall, ["wall"]),
        (ReadingColumn.Core, ["core"]),
    ];

    private static readonly ImmutableArray<ReadingColumn> _texts = [ReadingColumn.Point, ReadingColumn.Code, ReadingColumn.Wall, ReadingColumn.Core];

    private readonly Dictionary<ReadingColumn, (int Index, double? Unit, string Name)> _columns = [];

    private ReadingsHeader(CsvRow row)
    {
        var others = ImmutableArray.CreateBuilder<string>();
        foreach (var (cell, index) in row.Cells.Select((cell, index) => (cell, index)))
        {
            var (name, unit) = Split(cell);
            var column = _names.FirstOrDefault(known => known.Names.Contains(name, StringComparer.OrdinalIgnoreCase)).Names is { } names
                ? _names.First(known => known.Names == names).Column : (ReadingColumn?)null;
            if (column is not { } known || !_columns.TryAdd(known, (index, unit, cell)))
            {
                others.Add(cell);
            }
        }

        Others = [.. others.Where(name => name.Length > 0)];
    }

    /// <summary>Columns that mean nothing here, or come twice.</summary>
    public ImmutableArray<string> Others { get; }

    public ReadingAxes Axes => Has(ReadingColumn.Station) ? ReadingAxes.Wall : Has(ReadingColumn.X) ? ReadingAxes.Plain : ReadingAxes.Survey;

    /// <summary>Both plan coordinates, first the one along x, east or the wall.</summary>
    public (ReadingColumn First, ReadingColumn Second) Plan => Axes switch
    {
        ReadingAxes.Wall => (ReadingColumn.Station, ReadingColumn.Offset),
        ReadingAxes.Plain => (ReadingColumn.X, ReadingColumn.Y),
        _ => (ReadingColumn.Easting, ReadingColumn.Northing),
    };

    /// <param name="row">The first row.</param>
    /// <param name="file">Name for messages.</param>
    /// <param name="unit">Millimetres in the unit of columns that name none; null where none was given.</param>
    public static Outcome<ReadingsHeader> Read(CsvRow row, string file, double? unit)
    {
        var header = new ReadingsHeader(row);
        var (first, second) = header.Plan;
        var missing = new[] { first, second }.Where(column => !header.Has(column)).Select(column => _names.First(known => known.Column == column).Names[0]).ToArray();
        if (missing.Length > 0)
        {
            return Messages.ReadingColumnsMissing(file, row.Line, missing);
        }

        if (header.Axes == ReadingAxes.Wall && !header.Has(ReadingColumn.Wall))
        {
            return Messages.ReadingColumnsMissing(file, row.Line, ["wall"]);
        }

        if (!header.Has(ReadingColumn.Height) && !(header.Has(ReadingColumn.Rod) && header.Has(ReadingColumn.Instrument)))
        {
            return Messages.ReadingHeightsMissing(file, row.Line);
        }

        var unmeasured = header._columns.Where(column => !_texts.Contains(column.Key) && (column.Value.Unit ?? unit) is null).Select(column => column.Value.Name).FirstOrDefault();
        foreach (var column in header._columns.Keys.ToArray())
        {
            header._columns[column] = header._columns[column] with { Unit = header._columns[column].Unit ?? unit };
        }

        return unmeasured is null ? header : Messages.ReadingUnitMissing(file, row.Line, unmeasured);
    }

    public bool Has(ReadingColumn column) => _columns.ContainsKey(column);

    public string NameOf(ReadingColumn column) => _columns[column].Name;

    /// <summary>Millimetres in the unit of a column of lengths.</summary>
    public double UnitOf(ReadingColumn column) => _columns[column].Unit!.Value;

    /// <summary>The text in a column; empty where row or file have none.</summary>
    public string Text(CsvRow row, ReadingColumn column) =>
        _columns.TryGetValue(column, out var place) && place.Index < row.Cells.Length ? row.Cells[place.Index] : string.Empty;

    /// <summary>Millimetres in a unit by its name; null where it is none.</summary>
    public static double? Unit(string name) => name.ToLowerInvariant() switch
    {
        "mm" => 1,
        "cm" => 10,
        "m" => 1000,
        "in" => 25.4,
        "ft" => 304.8,
        _ => null,
    };

    private static (string Name, double? Unit) Split(string cell)
    {
        var end = cell.AsSpan().LastIndexOfAny(" _([");
        return end > 0 && Unit(cell[(end + 1)..].TrimEnd(')', ']').Trim()) is { } unit ? (cell[..end].Trim(' ', '_', '(', '['), unit) : (cell.Trim(), null);
    }
}
