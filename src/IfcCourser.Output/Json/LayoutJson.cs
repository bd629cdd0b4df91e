using System.Text.Encodings.Web;
using System.Text.Json;
using IfcCourser.Findings;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Json;

/// <summary>layout.json: everything a run decided, for other programs and for the next run.</summary>
public static class LayoutJson
{
    /// <summary>What every layout.json says it is; the number grows where members change their meaning.</summary>
    internal const string SchemaName = "ifccourser.layout/1";

    internal static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 1,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The JSON Schema (draft 2020-12) that every written file conforms to.</summary>
    public static string Schema()
    {
        using var stream = typeof(LayoutJson).Assembly.GetManifestResourceStream("Json/layout.schema.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>Writes UTF-8 with a line feed at the end; the same layout gives the same bytes.</summary>
    public static void Write(Layout layout, Stream stream)
    {
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", SchemaName);
            Generator(json);
            Model(json, layout.Model);
            if (layout.Job != JobFacts.None)
            {
                JobJson.Write(json, layout.Job);
            }

            SetsJson.Catalog(json, layout.Rules.Catalog);
            SetsJson.Rules(json, layout.Rules);
            SettingsJson.Write(json, layout.Rules);
            json.Lines("junctions", layout.Junctions, Junction);
            Walls(json, layout);
            json.Lines("barSchedule", layout.BarSchedule, ReinforcementJson.ScheduleRow);
            SetOutJson.Write(json, layout.SetOut);
            if (layout.Order is { } order)
            {
                OrderJson.Write(json, order);
            }

            json.Lines("shootingList", layout.ShootingList, SetOutJson.ShootingPoint);
            json.Lines("slabLevels", layout.SlabLevels, SlabLevel);
            json.Line("totals", line => Totals(line, LayoutTotals.Of(layout)));
            json.Lines("findings", layout.Findings, Finding);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    internal static void Finding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("code", finding.Code.Id);
        json.WriteString("severity", JsonNames.Of(finding.Severity));
        json.WriteString("message", finding.Message);
        if (finding.At is { } at)
        {
            json.WriteStartObject("at");
            Place(json, at);
            json.WriteEndObject();
        }
    }

    private static void SlabLevel(Utf8JsonWriter json, SlabLevel level)
    {
        json.WriteString("storey", level.Storey);
        json.Member("datum", level.Datum);
        if (level.Raised is { } raised)
        {
            json.Member("raised", raised);
        }

        json.WriteString("remedy", level.Remedy);
    }

    private static void Place(Utf8JsonWriter json, FindingPlace at)
    {
        if (at.S is { } s)
        {
            json.Member("s", s);
        }

        if (at.Z is { } z)
        {
            json.Member("z", z);
        }

        if (at.Course is { } course)
        {
            json.WriteNumber("course", course);
        }

        if (!at.Walls.IsEmpty)
        {
            json.Member("walls", at.Walls);
        }

        foreach (var (name, value) in ((string, string?)[])[("piece", at.Piece), ("core", at.Core), ("opening", at.Opening)])
        {
            if (value is not null)
            {
                json.WriteString(name, value);
            }
        }
    }

    private static void Generator(Utf8JsonWriter json) => json.Line("generator", line =>
    {
        line.WriteString("name", "IfcCourser");
        line.WriteString("version", typeof(Layout).Assembly.GetName().Version!.ToString(3));
    });

    private static void Model(Utf8JsonWriter json, ModelFacts model) => json.Line("model", line =>
    {
        line.WriteString("file", model.File);
        line.WriteString("sha256", model.Sha256);
        line.WriteString("ifcSchema", model.Schema);
        line.Member("lengthUnitMm", model.LengthUnitMm);
        line.WriteString("projectId", model.ProjectId);
        line.WriteString("projectName", model.ProjectName);
        line.WriteString("date", model.Date);
        if (model.Siting != LotSiting.AsDrawn)
        {
            line.WriteStartObject("siting");
            line.WriteBoolean("mirrored", model.Siting.IsMirrored);
            line.WriteNumber("rotation", model.Siting.Rotation);
            line.WriteEndObject();
        }
    });

    private static void Junction(Utf8JsonWriter json, JunctionLayout junction)
    {
        json.WriteString("id", junction.Id);
        json.WriteString("kind", JsonNames.Of(junction.Kind));
        json.Member("walls", junction.Walls);
        json.WriteString("how", JsonNames.Of(junction.How));
        json.WriteStartObject("through");
        json.WriteString("odd", junction.ThroughOdd);
        json.WriteString("even", junction.ThroughEven);
        json.WriteEndObject();
        json.Member("ties", junction.Ties.AsSpan());
    }

    /// <summary>Coursed and skipped walls together, in the order of their instance numbers.</summary>
    private static void Walls(Utf8JsonWriter json, Layout layout)
    {
        // The writer keeps all that is not flushed: of a large model hundreds of megabytes.
        const int Most = 1 << 20;
        var coursed = layout.Walls.Select(wall => (wall.Identity.StepId, Write: (Action)(() => WallJson.Coursed(json, layout, wall))));
        var skipped = layout.Skipped.Select(wall => (wall.Identity.StepId, Write: (Action)(() => WallJson.Skipped(json, wall))));
        json.WriteStartArray("walls");
        foreach (var (_, write) in coursed.Concat(skipped).OrderBy(wall => wall.StepId))
        {
            write();
            if (json.BytesPending > Most)
            {
                json.Flush();
            }
        }

        json.WriteEndArray();
    }

    private static void Totals(Utf8JsonWriter json, LayoutTotals totals)
    {
        json.WriteNumber("walls", totals.Walls);
        json.WriteNumber("coursed", totals.Coursed);
        json.WriteNumber("skipped", totals.Walls - totals.Coursed);
        json.WriteNumber("pieces", totals.Pieces);
        json.WriteNumber("fullUnits", totals.FullUnits);
        json.WriteNumber("partUnits", totals.PartUnits);
        json.WriteNumber("cuts", totals.Cuts);
        json.WriteNumber("cores", totals.Cores);
        json.WriteNumber("lintels", totals.Lintels);
    }
}
