using System.Globalization;
using System.Text;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tables;

/// <summary>
/// findings.csv: one row for each finding, walls and openings by GlobalId, lengths in mm; walls left out by choice are not listed (RFC 4180, UTF-8). Rows about
/// an opening's module end with how each jamb moves by the least shift that cures it, and with what more it takes to keep it, where that was worked out.
/// </summary>
public static class FindingsCsv
{
    public static void Write(Layout layout, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("code,severity,wall,opening,storey,at_s,at_z,message,remedy,move_left,move_right,cut_pieces,short_pieces,short_laps");
        var checks = layout.Walls.SelectMany(laid => laid.Openings.Select(opening => ((laid.Identity.StepId, opening.Opening.GlobalId), opening.Check)))
            .DistinctBy(pair => pair.Item1).ToDictionary(pair => pair.Item1, pair => pair.Check);
        foreach (var (wall, finding) in WallFinding.Of(layout))
        {
            var check = IsOfModule(finding) && wall is not null ? checks.GetValueOrDefault((wall.StepId, finding.At?.Opening ?? string.Empty)) : null;
            writer.WriteLine(Row(wall, finding, check));
        }
    }

    private static bool IsOfModule(Finding finding) => finding.Code == FindingCodes.OpeningMoved || finding.Code == FindingCodes.OpeningOffModule;

    private static string Row(WallIdentity? wall, Finding finding, OpeningCheck? check) => string.Join(',', ((string?[])
    [
        finding.Code.Id, finding.Severity.ToString().ToLowerInvariant(), wall?.GlobalId, finding.At?.Opening, wall?.Storey, Mm(finding.At?.S), Mm(finding.At?.Z),
        finding.Message, finding.Code.Remedy, Mm(check?.MoveLeft), Mm(check?.MoveRight),
        Count(check?.Cost?.CutPieces), Count(check?.Cost?.ShortPieces), Count(check?.Cost?.ShortLaps),
    ]).Select(CsvCell.Of));

    private static string? Count(int? count) => count?.ToString(CultureInfo.InvariantCulture);

    private static string? Mm(Length? length) => length?.Mm.ToString("0.######", CultureInfo.InvariantCulture);
}
