using System.Text;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Tables;
using IfcCourser.Output.Tests.Json;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Tables;

public sealed class FindingsCsvTests
{
    [Fact]
    public void Findings_of_the_model_come_first_then_those_of_its_walls_in_its_order()
    {
        var rows = Written(SampleLayout.Full.Findings[0].Message).Split("\r\n");

        Assert.Equal("code,severity,wall,opening,storey,at_s,at_z,message,remedy,move_left,move_right,cut_pieces,short_pieces,short_laps", rows[0]);
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

    /// <summary>What the designer can do and what it costs not to, at the findings that ask for it and at no other.</summary>
    [Fact]
    public void Rows_about_an_openings_module_tell_the_least_move_and_its_cost()
    {
        var wall = SampleLayout.Full.Walls[0];
        var opening = wall.Openings[0];
        var place = new FindingPlace { Opening = opening.Opening.GlobalId };
        var check = new OpeningCheck(ModuleState.WidthOff, null, Length.Zero, Length.FromMm(50.5), "widths are kept") { Cost = new KeepCost(10, 12, 0, -1) };
        using var stream = new MemoryStream();
        FindingsCsv.Write(
            SampleLayout.Full with
            {
                Findings = [],
                Walls = [wall with { Openings = [opening with { Check = check }], Findings = [new Finding(FindingCodes.OpeningOffModule, "off", place), new Finding(FindingCodes.LintelFormed, "formed", place)] }],
            },
            stream);

        var rows = Encoding.UTF8.GetString(stream.ToArray()).Split("\r\n");
        Assert.EndsWith(",0,50.5,10,0,-1", Assert.Single(rows, row => row.StartsWith("opening-off-module,", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.EndsWith(",,,,,", Assert.Single(rows, row => row.StartsWith("lintel-formed,", StringComparison.Ordinal)), StringComparison.Ordinal);
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
