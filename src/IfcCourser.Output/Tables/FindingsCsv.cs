using System.Globalization;
using System.Text;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tables;

/// <summary>findings.csv: one row for each finding, walls and openings by GlobalId, lengths in mm; walls left out by choice are not listed (RFC 4180, UTF-8).</summary>
public static class FindingsCsv
{
    public static void Write(Layout layout, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("code,severity,wall,opening,storey,at_s,at_z,message,remedy");
        foreach (var (wall, finding) in WallFinding.Of(layout))
        {
            writer.WriteLine(Row(wall, finding));
        }
    }

    private static string Row(WallIdentity? wall, Finding finding) => string.Join(',', ((string?[])
    [
        finding.Code.Id, finding.Severity.ToString().ToLowerInvariant(), wall?.GlobalId, finding.At?.Opening, wall?.Storey, Mm(finding.At?.S), Mm(finding.At?.Z),
        finding.Message, finding.Code.Remedy,
    ]).Select(CsvCell.Of));

    private static string? Mm(Length? length) => length?.Mm.ToString("0.######", CultureInfo.InvariantCulture);
}
