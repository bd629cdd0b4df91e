using System.Text.Json;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Walls;

namespace IfcCourser.Output.Coordination;

/// <summary>findings.json: what check knows of each wall and opening, and every finding; lengths in mm.</summary>
public static class FindingsJson
{
    /// <summary>Writes UTF-8 with a line feed at the end; the same report gives the same bytes.</summary>
    public static void Write(CheckReport report, Stream stream)
    {
        using (var json = new Utf8JsonWriter(stream, LayoutJson.Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", "ifccourser.findings/1");
            Members(json, report);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    /// <summary>The members of the file, for other objects that hold them too.</summary>
    public static void Members(Utf8JsonWriter json, CheckReport report)
    {
        var layout = report.Layout;
        json.Line("project", line =>
        {
            line.WriteString("file", layout.Model.File);
            line.WriteString("sha256", layout.Model.Sha256);
            line.WriteString("globalId", layout.Model.ProjectId);
            line.WriteString("date", layout.Model.Date);
            line.WriteString("openings", JsonNames.Of(layout.Rules.Openings));
        });
        json.WriteStartArray("checked");
        foreach (var wall in layout.Walls)
        {
            Wall(json, wall);
        }

        json.WriteEndArray();
        json.Lines("notCoursed", layout.Skipped, (line, wall) =>
        {
            Identity(line, wall.Identity);
            line.WriteString("reason", wall.Reason.Code.Id);
        });
        json.Lines("listed", report.Findings, Finding);
    }

    private static void Wall(Utf8JsonWriter json, WallLayout wall)
    {
        json.WriteStartObject();
        Identity(json, wall.Identity);
        json.Member("length", wall.Frame.Length);
        if (wall.LengthCheck is { } check)
        {
            json.Line("lengthOnModule", line => CheckJson.WallLength(line, check));
        }

        json.Lines("openings", wall.Openings, Opening);
        json.WriteEndObject();
    }

    private static void Identity(Utf8JsonWriter json, WallIdentity wall)
    {
        json.WriteString("wall", wall.GlobalId);
        json.WriteString("name", wall.Name);
        json.WriteString("storey", wall.Storey);
    }

    private static void Opening(Utf8JsonWriter json, OpeningLayout opening)
    {
        json.WriteString("opening", opening.Opening.GlobalId);
        json.WriteString("name", opening.Opening.Name);
        json.WriteString("kind", JsonNames.Of(opening.Opening.Kind));
        if (opening.Check is { } check)
        {
            CheckJson.Opening(json, check);
        }
    }

    private static void Finding(Utf8JsonWriter json, CheckedFinding listed)
    {
        LayoutJson.Finding(json, listed.Finding);
        json.WriteString("wall", listed.Wall?.GlobalId);
        json.WriteString("storey", listed.Wall?.Storey);
        json.WriteString("remedy", listed.Finding.Code.Remedy);
        json.WriteBoolean("accepted", listed.IsAccepted);
    }
}
