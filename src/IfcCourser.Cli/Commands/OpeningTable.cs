using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Cli.Commands;

/// <summary>The text table of check: a line for each opening, under its wall.</summary>
internal static class OpeningTable
{
    public static void Print(Layout layout, Terminal terminal)
    {
        string[] heads = [.. Messages.OpeningColumns];
        foreach (var wall in layout.Walls.Where(wall => !wall.Openings.IsEmpty))
        {
            terminal.Result(Messages.WallHead(wall.Identity));
            string[][] rows = [heads, .. wall.Openings.Select(opening => Row(wall, opening, layout.Rules))];
            var widths = heads.Select((_, column) => rows.Max(row => row[column].Length)).ToArray();
            foreach (var row in rows)
            {
                terminal.Result("  " + string.Join("  ", row.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd());
            }
        }
    }

    private static string[] Row(WallLayout wall, OpeningLayout opening, LayoutRules rules)
    {
        var codes = string.Join(' ', wall.Findings
            .Where(finding => string.Equals(finding.At?.Opening, opening.Opening.GlobalId, StringComparison.Ordinal))
            .Select(finding => finding.Code.Id).Distinct(StringComparer.Ordinal));
        var name = opening.Opening.Label;
        if (!opening.Interrupts)
        {
            return [name, Messages.StateUncoursed, "-", "-", "-", "-", "-", codes];
        }

        var deviation = OpeningDeviation.Of(wall, opening, rules);
        var units = rules.Catalog.Units;
        return
        [
            name, State(opening, deviation, rules), Signed(deviation.Left, units), Signed(deviation.Right, units), Signed(deviation.Sill, units),
            Signed(deviation.Head, units), Move(opening, units), codes,
        ];
    }

    private static string State(OpeningLayout opening, OpeningDeviation deviation, LayoutRules rules) =>
        Length.Max(Length.Abs(deviation.Left), Length.Abs(deviation.Right)) <= rules.ModuleTolerance ? Messages.StateOn
        : opening.OnModule ? Messages.StateCurable
        : Messages.StateOff;

    /// <summary>How far the jambs move: one figure where the width is kept.</summary>
    private static string Move(OpeningLayout opening, UnitSystem units)
    {
        var (left, right) = (opening.Placed.Left - opening.Design.Left, opening.Placed.Right - opening.Design.Right);
        return left == right ? Signed(left, units) : $"{Signed(left, units)} / {Signed(right, units)}";
    }

    private static string Signed(Length? length, UnitSystem units) =>
        length is { } value ? (value > Length.Zero ? "+" : string.Empty) + LengthText.Format(value, units) : "-";
}
