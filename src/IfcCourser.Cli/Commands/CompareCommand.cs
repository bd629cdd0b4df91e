using System.CommandLine;
using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Comparisons;
using IfcCourser.Output.Json;
using IfcCourser.Output.Sheets.Sets;

namespace IfcCourser.Cli.Commands;

/// <summary><c>compare OLD.json NEW.json</c>: what changed between two layouts.</summary>
internal static class CompareCommand
{
    private static readonly Argument<string> _older = new("OLD.json") { Description = Messages.ArgumentOlder };

    private static readonly Argument<string> _newer = new("NEW.json") { Description = Messages.ArgumentNewer };

    private static readonly Option<string?> _sheet = PaperOption.Create();

    private static readonly Option<bool> _json = new("--json") { Description = Messages.OptionJson };

    private static readonly Option<string?> _html = new("--html") { HelpName = "FILE", Description = Messages.OptionComparisonPage };

    public static Command Create(Func<ParseResult, Terminal> terminal)
    {
        var command = new Command("compare", Messages.AboutCompare) { _older, _newer, _sheet, _json, _html };
        command.SetAction(parsed =>
        {
            var told = terminal(parsed);
            var papers = PaperOption.Read(_sheet, parsed.GetValue(_sheet));
            return (int)(papers.IsOk
                ? Run(parsed.GetRequiredValue(_older), parsed.GetRequiredValue(_newer), papers.Value, parsed.GetValue(_json), parsed.GetValue(_html), told)
                : told.End(papers.Fault, ExitStatus.Usage));
        });
        return command;
    }

    private static ExitStatus Run(string older, string newer, PaperChoice paper, bool json, string? page, Terminal terminal)
    {
        var (was, now) = (LayoutReader.Load(older), LayoutReader.Load(newer));
        if (!was.IsOk || !now.IsOk)
        {
            return terminal.End((was.Fault ?? now.Fault)!, ExitStatus.Unreadable);
        }

        var comparison = LayoutComparison.Of(was.Value, now.Value);
        var superseded = SupersededSheets.Of(was.Value, now.Value, paper.For(now.Value));
        if (page is not null && OutputFile.Write(page, newer, stream => ComparisonPage.Write(was.Value, now.Value, comparison, superseded, stream)) is { } fault)
        {
            return terminal.End(fault, ExitStatus.Unwritable);
        }

        if (json)
        {
            terminal.Data(ComparisonJson.Of(was.Value, now.Value, comparison, superseded));
        }
        else
        {
            foreach (var line in Lines(was.Value, now.Value, comparison, superseded))
            {
                terminal.Result(line);
            }
        }

        return ExitStatus.Done;
    }

    private static IEnumerable<string> Lines(Layout older, Layout newer, LayoutComparison comparison, IEnumerable<SetSheet> superseded)
    {
        if (comparison.IsSame)
        {
            return [Messages.NothingChanged];
        }

        var (was, now) = (comparison.OldTotals, comparison.NewTotals);
        return
        [
            .. comparison.Removed.Select(wall => $"- {Messages.WallHead(wall)}"),
            .. comparison.Added.Select(wall => $"+ {Messages.WallHead(wall)}"),
            .. comparison.Changed.SelectMany(wall => wall.Changes.Select(change => $"    {change.What}: {change.Detail}").Prepend($"~ {Messages.WallHead(wall.New)}")),
            Messages.TotalsFromTo("blocks", was.Pieces, now.Pieces),
            Messages.TotalsFromTo("whole", was.FullUnits, now.FullUnits),
            Messages.TotalsFromTo("cut", was.PartUnits, now.PartUnits),
            Messages.TotalsFromTo("saw cuts", was.Cuts, now.Cuts),
            Messages.TotalsFromTo("lintels", was.Lintels, now.Lintels),
            Messages.TotalsFromTo("cores", was.Cores, now.Cores),
            .. OrderDifference.Of(older, newer).Select(Messages.Ordered),
            .. superseded.Select(sheet => Messages.Superseded(sheet.Number, sheet.Title)),
        ];
    }
}
