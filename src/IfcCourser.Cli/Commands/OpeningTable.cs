using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Coordination;
using IfcCourser.Units;

namespace IfcCourser.Cli.Commands;

/// <summary>The text table of check: a line for each wall and, under it, for each of its openings.</summary>
internal static class OpeningTable
{
    private const string Nothing = "-";

    public static void Print(CheckReport report, Terminal terminal)
    {
        var layout = report.Layout;
        var units = layout.Rules.Catalog.Units;
        var found = report.Findings.ToLookup(listed => listed.Wall?.StepId);
        foreach (var wall in layout.Walls)
        {
            var own = found[wall.Identity.StepId].ToList();
            var codes = Codes(own.Where(listed => listed.Finding.At?.Opening is null));
            terminal.Result($"{Messages.WallHead(wall.Identity)}: {(wall.LengthCheck is { } check ? Messages.WallLength(check, units) : Messages.LengthUnknown)}{(codes.Length > 0 ? $"; {codes}" : string.Empty)}");
            PrintOpenings(wall, own, units, terminal);
        }

        foreach (var wall in layout.Skipped.Where(wall => wall.Reason.Severity >= Severity.Warning))
        {
            terminal.Result(Messages.NotCoursedHead(wall.Identity, wall.Reason));
        }
    }

    private static void PrintOpenings(WallLayout wall, List<CheckedFinding> found, UnitSystem units, Terminal terminal)
    {
        if (wall.Openings.IsEmpty)
        {
            return;
        }

        string[] heads = [.. Messages.OpeningColumns];
        string[][] rows = [heads, .. wall.Openings.Select(opening => Row(opening, found, units))];
        var widths = heads.Select((_, column) => rows.Max(row => row[column].Length)).ToArray();
        foreach (var row in rows)
        {
            terminal.Result("  " + string.Join("  ", row.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd());
        }
    }

    private static string[] Row(OpeningLayout opening, List<CheckedFinding> found, UnitSystem units)
    {
        var codes = Codes(found.Where(listed => string.Equals(listed.Finding.At?.Opening, opening.Opening.GlobalId, StringComparison.Ordinal)));
        return opening.Check is { Deviation: { } deviation } check
            ?
            [
                opening.Opening.Label, Messages.State(check.State), Messages.Signed(deviation.Left, units), Messages.Signed(deviation.Right, units),
                Messages.Signed(deviation.Sill, units), Messages.Signed(deviation.Head, units), Messages.Move(check, units),
                check.Cost is { } cost ? Messages.Cost(cost) : Nothing, codes,
            ]
            : [opening.Opening.Label, Messages.StateUncoursed, Nothing, Nothing, Nothing, Nothing, Nothing, Nothing, codes];
    }

    /// <summary>The codes, those accepted before in brackets.</summary>
    private static string Codes(IEnumerable<CheckedFinding> found) => string.Join(' ', found
        .GroupBy(listed => listed.Finding.Code.Id, StringComparer.Ordinal)
        .Select(same => same.All(listed => listed.IsAccepted) ? $"({same.Key})" : same.Key));
}
