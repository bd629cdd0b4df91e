using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Coordination;
using IfcCourser.Units;

namespace IfcCourser.Cli.Commands;

/// <summary>
/// The text table of check, no wider than a terminal of 80 columns: for each wall its length and findings, a line for each of its openings, and
/// under those that have something to be settled what cures them, what keeping them costs and their findings.
/// </summary>
internal static class OpeningTable
{
    private const int Width = 80;
    private const string Indent = "  ";
    private const string Between = "  ";
    private const string Nothing = "-";

    public static void Print(CheckReport report, Terminal terminal)
    {
        var layout = report.Layout;
        var units = layout.Rules.Catalog.Units;
        var found = report.Findings.ToLookup(listed => listed.Wall?.StepId);
        Wrapped(Messages.OpeningKey(units), string.Empty, terminal);
        foreach (var wall in layout.Walls)
        {
            var own = found[wall.Identity.StepId].ToList();
            Wrapped(Messages.WallHead(wall.Identity), string.Empty, terminal);
            Wrapped(wall.LengthCheck is { } check ? Messages.WallLength(check, units) : Messages.LengthUnknown, Indent, terminal);
            Wrapped(Codes(own.Where(listed => listed.Finding.At?.Opening is null)), Indent, terminal);
            PrintOpenings(wall, own, units, terminal);
        }

        foreach (var wall in layout.Skipped.Where(wall => wall.Reason.Severity >= Severity.Warning))
        {
            Wrapped(Messages.NotCoursedHead(wall.Identity, wall.Reason), string.Empty, terminal);
        }
    }

    private static void PrintOpenings(WallLayout wall, List<CheckedFinding> found, UnitSystem units, Terminal terminal)
    {
        if (wall.Openings.IsEmpty)
        {
            return;
        }

        string[][] rows = [[.. Messages.OpeningColumns], .. wall.Openings.Select(opening => Row(opening, units))];
        var widths = Enumerable.Range(0, rows[0].Length).Select(column => rows.Max(row => row[column].Length)).ToArray();
        // Longer names stand on a line of their own.
        widths[0] = Math.Min(widths[0], Width - Indent.Length - widths.Skip(1).Sum(width => width + Between.Length));
        PrintRow(rows[0], widths, terminal);
        foreach (var (row, opening) in rows.Skip(1).Zip(wall.Openings))
        {
            PrintRow(row, widths, terminal);
            Wrapped(Settle(opening, found, units), Indent + Indent, terminal);
        }
    }

    private static void PrintRow(string[] row, int[] widths, Terminal terminal)
    {
        var name = row[0];
        if (name.Length > widths[0])
        {
            Wrapped(name, Indent, terminal);
            name = string.Empty;
        }

        var figures = row[1..^1].Select((cell, column) => cell.PadLeft(widths[column + 1]));
        terminal.Result((Indent + string.Join(Between, [name.PadRight(widths[0]), .. figures, row[^1]])).TrimEnd());
    }

    /// <summary>Name, ways of the four edges to their lines, state.</summary>
    private static string[] Row(OpeningLayout opening, UnitSystem units) => opening.Check is { Deviation: { } deviation } check
        ?
        [
            opening.Opening.Label, Messages.Signed(deviation.Left, units), Messages.Signed(deviation.Right, units),
            Messages.Signed(deviation.Sill, units), Messages.Signed(deviation.Head, units), Messages.State(check.State),
        ]
        : [opening.Opening.Label, Nothing, Nothing, Nothing, Nothing, Messages.StateUncoursed];

    /// <summary>The least move, the cost of keeping it, its findings; empty where it has none of these.</summary>
    private static string Settle(OpeningLayout opening, List<CheckedFinding> found, UnitSystem units)
    {
        var check = opening.Check;
        string[] parts =
        [
            check is { } moves && (moves.MoveLeft != Length.Zero || moves.MoveRight != Length.Zero) ? Messages.Move(moves, units) : string.Empty,
            check?.Cost is { } cost ? Messages.Kept(CostText.Of(cost)) : string.Empty,
            Codes(found.Where(listed => string.Equals(listed.Finding.At?.Opening, opening.Opening.GlobalId, StringComparison.Ordinal))),
        ];
        return string.Join("; ", parts.Where(part => part.Length > 0));
    }

    /// <summary>The codes, those accepted before in brackets.</summary>
    private static string Codes(IEnumerable<CheckedFinding> found) => string.Join(' ', found
        .GroupBy(listed => listed.Finding.Code.Id, StringComparer.Ordinal)
        .Select(same => same.All(listed => listed.IsAccepted) ? $"({same.Key})" : same.Key));

    /// <summary>Prints words in as many lines as the width asks for, those after the first indented further; an empty text prints nothing.</summary>
    private static void Wrapped(string text, string indent, Terminal terminal)
    {
        var (line, further) = (string.Empty, indent + Indent);
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > Width)
            {
                terminal.Result(line);
                (line, indent) = (string.Empty, further);
            }

            line = line.Length == 0 ? indent + word : $"{line} {word}";
        }

        if (line.Length > 0)
        {
            terminal.Result(line);
        }
    }
}
