using System.Text;
using System.Text.Json;
using IfcCourser.Findings;
using IfcCourser.Layouts;

namespace IfcCourser.Cli.Commands;

/// <summary>What a run came to, as text or as one JSON object.</summary>
internal sealed class RunSummary(Layout layout, ChosenSets sets, Severity? failOn)
{
    private readonly LayoutTotals _totals = LayoutTotals.Of(layout);
    private readonly List<Finding> _findings = [.. LayoutTotals.AllFindings(layout)];

    /// <summary>Folder of the results, where there is one.</summary>
    public required string? Folder { get; init; }

    /// <summary>Files written, relative to the folder.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];

    /// <summary>Files beside them that an earlier run left.</summary>
    public IReadOnlyList<string> Leftovers { get; init; } = [];

    public ExitStatus Status =>
        failOn is { } least && _findings.Exists(finding => finding.Severity >= least) ? ExitStatus.Findings : ExitStatus.Done;

    public void Print(Terminal terminal, bool json)
    {
        if (terminal.Verbose)
        {
            _findings.ForEach(finding => terminal.Step(Messages.Finding(finding)));
        }

        if (json)
        {
            terminal.Data(Json());
            return;
        }

        foreach (var line in Lines())
        {
            terminal.Result(line);
        }
    }

    private IEnumerable<string> Lines()
    {
        yield return Messages.Model(layout.Model);
        yield return Messages.Chosen(sets.Catalog.Name, sets.Rules.Name, sets.Why);
        yield return Messages.Walls(_totals);
        foreach (var reason in Reasons())
        {
            yield return Messages.Counted(reason.Key, reason.Count());
        }

        yield return Messages.Blocks(_totals);
        yield return Messages.FindingCounts(Count(Severity.Error), Count(Severity.Warning), Count(Severity.Note));
        foreach (var code in _findings.Where(finding => finding.Severity > Severity.Note)
                     .GroupBy(finding => finding.Code.Id, StringComparer.Ordinal).OrderBy(code => code.Key, StringComparer.Ordinal))
        {
            yield return Messages.Counted(code.Key, code.Count());
        }

        if (Files.Count > 0)
        {
            yield return Messages.Written(Folder!);
            foreach (var kind in Files.GroupBy(Kind, StringComparer.Ordinal))
            {
                yield return kind.Count() == 1 ? Messages.WrittenFile(kind.Single()) : Messages.WrittenFiles(kind.Key, kind.Count());
            }
        }

        if (Leftovers.Count > 0)
        {
            yield return Messages.Leftover(Leftovers);
        }

        foreach (var caution in sets.Rules.Cautions)
        {
            yield return caution;
        }

        yield return Messages.Cautions;
    }

    private static string Kind(string file) => $"{Path.GetDirectoryName(file)}/*{Path.GetExtension(file)}";

    private string Json()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("model", layout.Model.File);
            json.WriteString("catalog", sets.Catalog.Name);
            json.WriteString("rules", sets.Rules.Name);
            json.WriteString("chosen", sets.Why);
            json.WriteNumber("walls", _totals.Walls);
            json.WriteNumber("coursed", _totals.Coursed);
            json.WriteNumber("skipped", _totals.Walls - _totals.Coursed);
            Counts(json, "reasons", Reasons());
            json.WriteNumber("pieces", _totals.Pieces);
            json.WriteNumber("fullUnits", _totals.FullUnits);
            json.WriteNumber("partUnits", _totals.PartUnits);
            json.WriteNumber("cuts", _totals.Cuts);
            json.WriteNumber("cores", _totals.Cores);
            json.WriteNumber("lintels", _totals.Lintels);
            json.WriteNumber("errors", Count(Severity.Error));
            json.WriteNumber("warnings", Count(Severity.Warning));
            json.WriteNumber("notes", Count(Severity.Note));
            Counts(json, "findings", _findings.GroupBy(finding => finding.Code.Id, StringComparer.Ordinal));
            json.WriteString("out", Folder);
            json.WriteStartArray("files");
            foreach (var file in Files)
            {
                json.WriteStringValue(file);
            }

            json.WriteEndArray();
            json.WriteNumber("exitStatus", (int)Status);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Counts<T>(Utf8JsonWriter json, string name, IEnumerable<IGrouping<string, T>> groups)
    {
        json.WriteStartObject(name);
        foreach (var group in groups.OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            json.WriteNumber(group.Key, group.Count());
        }

        json.WriteEndObject();
    }

    private IEnumerable<IGrouping<string, Finding>> Reasons() =>
        layout.Skipped.Select(wall => wall.Reason).GroupBy(reason => reason.Code.Id, StringComparer.Ordinal).OrderBy(reason => reason.Key, StringComparer.Ordinal);

    private int Count(Severity severity) => _findings.Count(finding => finding.Severity == severity);
}
