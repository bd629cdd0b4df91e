using System.Text;
using IfcCourser.Findings;
using IfcCourser.Output.Tables;
using IfcCourser.Output.Tests.Json;

namespace IfcCourser.Output.Tests.Tables;

public sealed class FindingsCsvTests
{
    [Fact]
    public void Findings_of_the_model_come_first_then_those_of_its_walls_in_its_order()
    {
        var rows = Written(SampleLayout.Full.Findings[0].Message).Split("\r\n");

        Assert.Equal("code,severity,wall,opening,storey,at_s,at_z,message,remedy", rows[0]);
        Assert.StartsWith("outline-not-filled,warning,,,,,,a finding of the model,", rows[1], StringComparison.Ordinal);
        Assert.StartsWith("overlap-short,warning,1UcKJVh1wiUc0jPM8BIIf8,o,Erdgeschoß,1,2,short,", rows[2], StringComparison.Ordinal);
        Assert.StartsWith("no-body,warning,2UcKJVh1wiUc0jPM8BIIf8,", rows[3], StringComparison.Ordinal);
        Assert.StartsWith("overlap-short,warning,0UcKJVh1wiUc0jPM8BIIf8,", rows[4], StringComparison.Ordinal);
        Assert.Equal(string.Empty, rows[5]);
    }

    [Fact]
    public void An_opening_is_listed_by_its_id_and_the_message_stays_as_it_is()
    {
        var wall = SampleLayout.Full.Walls[0];
        var id = wall.Openings[0].Opening.GlobalId;
        using var stream = new MemoryStream();
        FindingsCsv.Write(
            SampleLayout.Full with
            {
                Walls = [wall with { Findings = [new Finding(FindingCodes.LintelMissing, "no room over Front door", new FindingPlace { Opening = id })] }],
            },
            stream);

        Assert.Contains($",{id},Erdgeschoß,,,no room over Front door,", Encoding.UTF8.GetString(stream.ToArray()), StringComparison.Ordinal);
    }

    /// <summary>RFC 4180, 2.5 to 2.7.</summary>
    [Fact]
    public void Commas_quotes_and_line_breaks_are_quoted() =>
        Assert.Contains(",\"a, \"\"b\"\"\nc\",", Written("a, \"b\"\nc"), StringComparison.Ordinal);

    private static string Written(string message)
    {
        using var stream = new MemoryStream();
        FindingsCsv.Write(SampleLayout.Full with { Findings = [new Finding(FindingCodes.OutlineNotFilled, message)] }, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
