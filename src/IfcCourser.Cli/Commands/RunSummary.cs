using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Coordination;
using IfcCourser.Output.IfcWriteBack.Openings;
using IfcCourser.Output.Tables;

namespace IfcCourser.Cli.Commands;

/// <summary>What a run came to, as text or as one JSON object.</summary>
internal sealed class RunSummary(Layout layout, OpenedModel model)
{
    private const int MostCodes = 12;

    private readonly ChosenSets _sets = model.Sets;
    private readonly LayoutTotals _totals = LayoutTotals.Of(layout);
    private readonly List<WallFinding> _listed = [.. WallFinding.Of(layout)];
    private readonly ImmutableArray<OpeningChange>? _changes = model.Settings.ApplyOpenings ? OpeningChange.Of(model.Model, layout) : null;

    /// <summary>Folder of the results, where there is one.</summary>
    public required string? Folder { get; init; }

    /// <summary>Files written, relative to the folder.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];

    /// <summary>Files beside them that an earlier run left.</summary>
    public IReadOnlyList<string> Leftovers { get; init; } = [];

    /// <summary>What check found, with what was accepted before; null for other commands.</summary>
    public CheckReport? Report { get; init; }

    public ExitStatus Status => (Report ?? CheckReport.Of(layout, accepted: null)).Findings.Any(found => found.Fails(model.Settings.FailOn)) ? ExitStatus.Findings : ExitStatus.Done;

    public void Print(Terminal terminal, bool json)
    {
        if (terminal.Verbose)
        {
            Selection.Print(layout, terminal);
            _listed.ForEach(listed => terminal.Step(Messages.Finding(listed.Wall, listed.Finding)));
        }

        if (json)
        {
            terminal.Data(Json());
        }
        else
        {
            foreach (var line in Lines())
            {
                terminal.Result(line);
            }
        }

        foreach (var caution in _sets.Rules.Cautions.Append(Messages.Cautions))
        {
            terminal.Note(caution);
        }
    }

    private IEnumerable<string> Lines()
    {
        yield return Messages.Model(layout.Model);
        yield return Messages.Chosen(_sets.Catalog.Name, _sets.Rules.Name, _sets.Why);
        yield return Messages.Walls(_totals);
        foreach (var reason in Reasons())
        {
            yield return Messages.NotLaidOut(reason.First().Code, reason.Count());
        }

        if (_totals.Coursed == 0)
        {
            yield return NoneLaidOut();
        }

        yield return Messages.Blocks(_totals);
        yield return Messages.FindingCounts(Count(Severity.Error), Count(Severity.Warning), Count(Severity.Note));
        if (Report?.Findings.Count(found => found.IsAccepted) is > 0 and var accepted)
        {
            yield return Messages.Accepted(accepted, _listed.Count - accepted);
        }

        foreach (var line in CodeLines())
        {
            yield return line;
        }

        if (_changes is { } changes)
        {
            yield return Messages.OpeningsMoved(changes.Count(change => change.IsMoved), changes.Count(change => !change.IsMoved));
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
    }

    /// <summary>A line a code and severity of what was not accepted before, the gravest and commonest first; what is too much for a summary is summed up.</summary>
    private IEnumerable<string> CodeLines()
    {
        var told = Report is { } report ? report.Findings.Where(found => !found.IsAccepted).Select(found => found.Finding) : _listed.Select(listed => listed.Finding);
        var codes = told.GroupBy(finding => (finding.Code, finding.Severity))
            .OrderByDescending(code => code.Key.Severity).ThenByDescending(code => code.Count()).ThenBy(code => code.Key.Code.Id, StringComparer.Ordinal)
            .ToList();
        var shown = codes.Count > MostCodes ? MostCodes - 1 : codes.Count;
        var lines = codes.Take(shown).Select(code => Messages.FindingCount(code.Key.Severity, code.Key.Code, code.Count()));
        return shown == codes.Count ? lines : lines.Append(Messages.MoreCodes(codes.Count - shown, codes.Skip(shown).Sum(code => code.Count())));
    }

    private string NoneLaidOut()
    {
        var reasons = Reasons().Select(reason => (reason.First().Code, Count: reason.Count())).ToList();
        if (reasons.Count == 0)
        {
            return Messages.NoWalls;
        }

        // Walls that were not asked for don't tell what keeps the others from being laid out.
        var commonest = reasons.OrderBy(reason => reason.Code == FindingCodes.NotSelected).ThenByDescending(reason => reason.Count).First().Code;
        var nameless = layout.Skipped.Where(wall => wall.Reason.Code == FindingCodes.NoMasonryLayer).Select(wall => wall.Identity.StepId).ToHashSet();
        return Messages.NoneLaidOut(
            commonest, commonest == FindingCodes.NoMasonryLayer ? NamesSeen.In([.. model.Model.Walls.Where(wall => nameless.Contains(wall.StepId))]) : []);
    }

    private static string Kind(string file) => $"{Path.GetDirectoryName(file)}/*{Path.GetExtension(file)}";

    private string Json()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("model", layout.Model.File);
            json.WriteString("catalog", _sets.Catalog.Name);
            json.WriteString("rules", _sets.Rules.Name);
            json.WriteString("chosen", _sets.Why);
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
            Counts(json, "findings", Codes());
            if (_changes is { } changes)
            {
                json.WriteNumber("openingsMoved", changes.Count(change => change.IsMoved));
                json.WriteNumber("openingsNotMoved", changes.Count(change => !change.IsMoved));
            }

            json.WriteString("out", Folder);
            json.WriteStartArray("files");
            foreach (var file in Files)
            {
                json.WriteStringValue(file);
            }

            json.WriteEndArray();
            if (Report is { } report)
            {
                json.WriteNumber("accepted", report.Findings.Count(found => found.IsAccepted));
                json.WriteStartObject("check");
                FindingsJson.Members(json, report);
                json.WriteEndObject();
            }

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

    private IEnumerable<IGrouping<string, Finding>> Codes() => _listed.Select(listed => listed.Finding).GroupBy(finding => finding.Code.Id, StringComparer.Ordinal);

    private int Count(Severity severity) => _listed.Count(listed => listed.Finding.Severity == severity);
}
