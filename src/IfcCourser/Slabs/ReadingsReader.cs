using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>
/// Reads a readings file: CSV with a header. Plan columns x, y or easting, northing or wall, station, offset; height z, or rod and hi (a blank hi
/// is that of the row before); point, code (SLAB where blank, TOP, BAR, CONTROL), wall, core. Rows without a reading are points nobody shot.
/// </summary>
public static class ReadingsReader
{
    /// <summary>mm: what no reading of a building site is.</summary>
    private const double Largest = 1e11;

    /// <summary>Of a file: millions of readings.</summary>
    private const long MostBytes = 256 * 1024 * 1024;

    /// <summary>The readings in a file of the user.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="unit">mm, cm, m, in or ft for columns whose header names none; null where each must.</param>
    public static Outcome<ReadingsFile> Load(string path, string? unit)
    {
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > MostBytes })
            {
                return Messages.ReadingsTooLarge(path, MostBytes / (1024 * 1024));
            }

            return Read(File.ReadAllText(path), path, unit);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Messages.ReadingsUnreadable(path, e);
        }
    }

    /// <summary>The readings in a text.</summary>
    public static Outcome<ReadingsFile> Read(string text, string file, string? unit)
    {
        var separator = CsvRow.Separator(text);
        var rows = CsvRow.Of(text, separator).Where(row => !row.IsBlank).ToArray();
        if (rows.Length == 0)
        {
            return Messages.ReadingsEmpty(file);
        }

        var header = ReadingsHeader.Read(rows[0], file, unit is null ? null : ReadingsHeader.Unit(unit));
        if (!header.IsOk)
        {
            return header.Fault;
        }

        var table = new Rows(header.Value, file, separator == ',' ? '.' : ',');
        var readings = rows.Skip(1).Select(table.Read).OfType<Reading>().ToImmutableArray();
        return table.Fault is { } fault ? fault : new ReadingsFile(file, header.Value.Axes, readings, table.NotShot, header.Value.Others);
    }

    private sealed class Rows(ReadingsHeader header, string file, char decimalMark)
    {
        private double? _instrument;

        public Fault? Fault { get; private set; }

        public int NotShot { get; private set; }

        /// <summary>Null where the row is not shot, or something is wrong with it.</summary>
        public Reading? Read(CsvRow row)
        {
            if (Code(row) is not { } code)
            {
                return null;
            }

            _instrument = Length(row, ReadingColumn.Instrument) ?? _instrument;
            var (first, second) = (Length(row, header.Plan.First), Length(row, header.Plan.Second));
            var height = Height(row);
            var isShot = code is ReadingCode.Bar or ReadingCode.Control ? first is not null || second is not null : height is not null;
            if (!isShot)
            {
                NotShot++;
                return null;
            }

            if (first is not { } x || second is not { } y)
            {
                Note(Messages.ReadingCellMissing(file, row.Line, header.NameOf(first is null ? header.Plan.First : header.Plan.Second)));
                return null;
            }

            return new Reading(
                row.Line, header.Text(row, ReadingColumn.Point), code, new Vector2(x, y), height,
                Named(row, ReadingColumn.Wall), Named(row, ReadingColumn.Core));
        }

        private double? Height(CsvRow row)
        {
            var (height, rod) = (Length(row, ReadingColumn.Height), Length(row, ReadingColumn.Rod));
            if (height is null && rod is not null && _instrument is null)
            {
                Note(Messages.ReadingInstrumentMissing(file, row.Line));
            }

            return height ?? _instrument - rod;
        }

        private ReadingCode? Code(CsvRow row)
        {
            var text = header.Text(row, ReadingColumn.Code);
            if (text.Length == 0)
            {
                return ReadingCode.Slab;
            }

            if (Enum.GetValues<ReadingCode>().Where(code => string.Equals(code.ToString(), text, StringComparison.OrdinalIgnoreCase)).Select(code => (ReadingCode?)code).FirstOrDefault() is { } code)
            {
                return code;
            }

            Note(Messages.ReadingCodeUnknown(file, row.Line, text));
            return null;
        }

        private string? Named(CsvRow row, ReadingColumn column) => header.Text(row, column) is { Length: > 0 } name ? name : null;

        /// <summary>mm; null where the cell is blank. A cell may bear a unit of its own, as 4 3/8 in.</summary>
        private double? Length(CsvRow row, ReadingColumn column)
        {
            var text = header.Text(row, column);
            if (text.Length == 0)
            {
                return null;
            }

            var number = decimalMark == ',' ? text.Replace(',', '.') : text;
            if (double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value * header.UnitOf(column)) <= Largest)
            {
                return value * header.UnitOf(column);
            }

            if (LengthText.TryParse(text, out var length, out _))
            {
                return length.Mm;
            }

            Note(Messages.ReadingNoLength(file, row.Line, header.NameOf(column), text));
            return null;
        }

        private void Note(Fault fault) => Fault ??= fault;
    }
}
