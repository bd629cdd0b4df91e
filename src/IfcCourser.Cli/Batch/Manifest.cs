using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Settings;

namespace IfcCourser.Cli.Batch;

/// <summary>Reads which lots a batch has: a CSV file with a row for each, or a folder of models.</summary>
internal static class Manifest
{
    private const string LotColumn = "lot";
    private const string ModelColumn = "model";
    private const string MirrorColumn = "mirror";
    private const string RotationColumn = "rotation";
    private const string CatalogColumn = "catalog";
    private const string RulesColumn = "rules";
    private const string JobColumn = "job";
    private const string PhaseColumn = "phase";

    private static readonly ImmutableArray<string> _columns =
        [LotColumn, ModelColumn, MirrorColumn, RotationColumn, CatalogColumn, RulesColumn, JobColumn, PhaseColumn];

    /// <summary>The lots in the order of the rows, or of the files' names; the first fault counts.</summary>
    /// <param name="path">A CSV file, or a folder with .ifc and .ifczip files.</param>
    public static Outcome<List<Lot>> Read(string path)
    {
        try
        {
            return Directory.Exists(path) ? OfFolder(path) : OfText(File.ReadAllText(path), path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Messages.ManifestNotRead(path, e);
        }
    }

    private static Outcome<List<Lot>> OfFolder(string folder)
    {
        var lots = new List<Lot>();
        var models = Directory.EnumerateFiles(folder)
            .Where(file => Path.GetExtension(file).ToUpperInvariant() is ".IFC" or ".IFCZIP")
            .Order(StringComparer.Ordinal);
        foreach (var model in models)
        {
            var lot = new Lot(Path.GetFileNameWithoutExtension(model), Path.GetFileName(model), model, LotSiting.AsDrawn, null, null, null, string.Empty);
            if (!LotName.IsSafe(lot.Name))
            {
                return Messages.UnsafeLot(model, null, lot.Name);
            }

            if (lots.Find(other => string.Equals(other.Name, lot.Name, StringComparison.OrdinalIgnoreCase)) is { } twin)
            {
                return Messages.ModelsOfOneName(model, twin.Plan);
            }

            lots.Add(lot);
        }

        return lots.Count == 0 ? Messages.NoModels(folder) : lots;
    }

    /// <summary>The lots of a manifest given as text.</summary>
    /// <param name="file">Named in faults; paths in the text are relative to its folder.</param>
    public static Outcome<List<Lot>> OfText(string text, string file)
    {
        var head = text.AsSpan(0, text.AsSpan().IndexOfAny('\r', '\n') is var end and >= 0 ? end : text.Length);
        var read = CsvRow.Read(text, head.Contains(';') && !head.Contains(',') ? ';' : ',', file);
        if (!read.IsOk)
        {
            return read.Fault;
        }

        if (read.Value is not [var heads, .. var rows])
        {
            return Messages.NoLots(file);
        }

        if (HeadFault(heads, file) is { } fault)
        {
            return fault;
        }

        var columns = heads.Cells.Select((name, i) => (Name: name.ToLowerInvariant(), Place: i)).ToDictionary(column => column.Name, column => column.Place, StringComparer.Ordinal);
        var lots = new List<Lot>();
        var lines = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in rows)
        {
            var lot = LotOf(row, columns, heads.Cells.Length, file);
            if (!lot.IsOk)
            {
                return lot.Fault;
            }

            if (!lines.TryAdd(lot.Value.Name, row.Line))
            {
                return Messages.LotTwice(file, row.Line, lot.Value.Name, lines[lot.Value.Name]);
            }

            lots.Add(lot.Value);
        }

        return lots.Count == 0 ? Messages.NoLots(file) : lots;
    }

    private static Fault? HeadFault(CsvRow heads, string file)
    {
        var names = heads.Cells.Select(name => name.ToLowerInvariant()).ToList();
        return names.Find(name => !_columns.Contains(name, StringComparer.Ordinal)) is { } unknown ? Messages.UnknownColumn(file, heads.Line, unknown, NearestName.Of(unknown, _columns), _columns)
            : names.GroupBy(name => name, StringComparer.Ordinal).FirstOrDefault(same => same.Count() > 1) is { } twice ? Messages.ColumnTwice(file, heads.Line, twice.Key)
            : new[] { LotColumn, ModelColumn }.FirstOrDefault(name => !names.Contains(name)) is { } missing ? Messages.ColumnMissing(file, heads.Line, missing)
            : null;
    }

    private static Outcome<Lot> LotOf(CsvRow row, Dictionary<string, int> columns, int width, string file)
    {
        if (row.Cells.Length > width)
        {
            return Messages.CellsTooMany(file, row.Line, row.Cells.Length, width);
        }

        string Cell(string column) => columns.TryGetValue(column, out var place) && place < row.Cells.Length ? row.Cells[place] : string.Empty;
        var (name, plan, mirror, turn) = (Cell(LotColumn), Cell(ModelColumn), Mirror(Cell(MirrorColumn)), Rotation(Cell(RotationColumn)));
        var fault = !LotName.IsSafe(name) ? Messages.UnsafeLot(file, row.Line, name)
            : plan.Length == 0 ? Messages.LotWithoutModel(file, row.Line, name)
            : mirror is null ? Messages.BadMirror(file, row.Line, Cell(MirrorColumn))
            : turn is null ? Messages.BadRotation(file, row.Line, Cell(RotationColumn))
            : null;
        return fault is not null
            ? fault
            : new Lot(
                name, plan, Beside(file, plan), LotSiting.Of(mirror!.Value, turn!.Value), Set(Cell(CatalogColumn), file), Set(Cell(RulesColumn), file),
                Cell(JobColumn) is { Length: > 0 } job ? Beside(file, job) : null, Cell(PhaseColumn));
    }

    private static bool? Mirror(string text) => text.ToUpperInvariant() switch
    {
        "" or "NO" or "N" or "FALSE" or "0" => false,
        "YES" or "Y" or "TRUE" or "1" => true,
        _ => null,
    };

    private static decimal? Rotation(string text) =>
        text.Length == 0 ? 0
        : decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees) && Math.Abs(degrees) <= 360 ? degrees
        : null;

    /// <summary>A built-in name stays; a file is sought beside the manifest.</summary>
    private static string? Set(string nameOrFile, string manifest) =>
        nameOrFile.Length == 0 ? null
        : nameOrFile.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) ? Beside(manifest, nameOrFile)
        : nameOrFile;

    private static string Beside(string manifest, string path) => Path.Combine(Path.GetDirectoryName(manifest) ?? string.Empty, path);
}
