using System.Text.Json;
using System.Text.Unicode;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Takeoff;
using IfcCourser.Walls;

namespace IfcCourser.Output.Json;

/// <summary>Reads a layout.json back: writing what was read gives the same bytes, and sheets made from it are those of the run.</summary>
/// <remarks>Of walls as the model has them only what outputs need is in the file: not what names were read, nor whether they carry load.</remarks>
public static class LayoutReader
{
    private static readonly JsonDocumentOptions _options = new() { AllowDuplicateProperties = false };

    /// <summary>The layout in a file; a fault names the file, the member, what is wrong and what to do.</summary>
    public static Outcome<Layout> Load(string path)
    {
        try
        {
            return Read(File.ReadAllBytes(path), path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Messages.Unreadable(path, e);
        }
    }

    /// <summary>The layout in the bytes of a file.</summary>
    /// <param name="utf8">With or without a byte-order mark.</param>
    /// <param name="file">Name for messages.</param>
    public static Outcome<Layout> Read(ReadOnlyMemory<byte> utf8, string file)
    {
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        if (!Utf8.IsValid(utf8.Span))
        {
            return Messages.NoJson(file, null);
        }

        try
        {
            using var document = JsonDocument.Parse(utf8.Span.StartsWith(mark) ? utf8[mark.Length..] : utf8, _options);
            if (Schema(document.RootElement, file) is { } other)
            {
                return other;
            }

            var fault = new JsonFault(file);
            var layout = Layout(JsonPlace.Root(document.RootElement, fault));
            return fault.First is { } first ? first : layout!;
        }
        catch (JsonException e)
        {
            return Messages.NoJson(file, e.LineNumber);
        }
    }

    internal static Finding Finding(JsonPlace place)
    {
        var id = place["code"].Text();
        var severity = place["severity"].Choice<Severity>(JsonNames.Of);

        // Of a version that had other codes: its words are in the message.
        var code = FindingCodes.All.FirstOrDefault(code => string.Equals(code.Id, id, StringComparison.Ordinal)) ?? new FindingCode(id, severity, string.Empty, string.Empty);
        return new Finding(code, place["message"].Text(), place.Optional("at") is { } at ? Place(at) : null) { Severity = severity };
    }

    private static FindingPlace Place(JsonPlace at) => new()
    {
        S = at.Optional("s")?.Length(),
        Z = at.Optional("z")?.Length(),
        Course = at.Optional("course")?.Whole(),
        Piece = at.Optional("piece")?.Text(),
        Core = at.Optional("core")?.Text(),
        Opening = at.Optional("opening")?.Text(),
        Walls = at.Optional("walls")?.Texts() ?? [],
    };

    private static Fault? Schema(JsonElement root, string file)
    {
        if (root.ValueKind is not JsonValueKind.Object || !root.TryGetProperty("schema", out var schema) || schema.ValueKind is not JsonValueKind.String)
        {
            return Messages.NoLayout(file);
        }

        return schema.ValueEquals(LayoutJson.SchemaName) ? null : Messages.OtherSchema(file, schema.ToString(), LayoutJson.SchemaName);
    }

    private static Layout? Layout(JsonPlace root)
    {
        if (SettingsJson.Read(root) is not { } rules)
        {
            return null;
        }

        var walls = new WallsReader(root["walls"]);
        var read = new Layout
        {
            Model = Model(root["model"]),
            Job = root.Optional("job") is { } job ? JobJson.Read(job) : JobFacts.None,
            Rules = rules,
            Walls = walls.Coursed,
            Skipped = walls.Skipped,
            WallIds = walls.Ids,
            Junctions = root["junctions"].List(Junction),
            BarSchedule = root["barSchedule"].List(ReinforcementReader.ScheduleRow),
            SetOut = SetOutReader.Read(root["setOut"]),
            ShootingList = root["shootingList"].List(SetOutReader.ShootingPoint),
            SlabLevels = root["slabLevels"].List(level => new SlabLevel(
                level["storey"].TextOrNull(), level["datum"].Length(), level.Optional("raised")?.Length(), level["remedy"].Text())),
            Findings = root["findings"].List(Finding),
        };
        if (!root.IsSound)
        {
            return null;
        }

        // An order follows from the rest, as the file gives it: it is reckoned anew rather than believed.
        var layout = RoundedLayout.Of(read);
        return root.Optional("takeoff") is { } takeoff && Phases(takeoff, layout) is var phases && root.IsSound
            ? Orders.With(layout, takeoff["offcuts"].Choice<OffcutReuse>(JsonNames.Of), phases)
            : layout;
    }

    private static ImmutableArray<DeliveryPhase> Phases(JsonPlace takeoff, Layout layout)
    {
        if (takeoff.Optional("deliveries") is not { } deliveries)
        {
            return [];
        }

        ImmutableArray<DeliveryPhase> phases = [.. deliveries.List(delivery => new DeliveryPhase(delivery["phase"].Text(), delivery["walls"].Texts()))];
        if (!phases.SelectMany(phase => phase.Walls).Order(StringComparer.Ordinal).SequenceEqual(layout.Walls.Select(wall => wall.Identity.GlobalId).Order(StringComparer.Ordinal), StringComparer.Ordinal))
        {
            deliveries.Note("do not name each coursed wall once");
        }

        return phases;
    }

    private static ModelFacts Model(JsonPlace place) => new(
        place["file"].Text(),
        place["sha256"].Text(),
        place["ifcSchema"].Text(),
        place["lengthUnitMm"].Number(),
        place["projectId"].TextOrNull(),
        place["projectName"].TextOrNull(),
        place["date"].Text())
    {
        Siting = place.Optional("siting") is { } siting ? LotSiting.Of(siting["mirrored"].Flag(), (decimal)(siting["rotation"].Number() % 360)) : LotSiting.AsDrawn,
    };

    private static JunctionLayout Junction(JsonPlace place) => new(
        place["id"].Text(),
        place["kind"].Choice<JunctionKind>(JsonNames.Of),
        place["walls"].Texts(),
        place["how"].Choice<JunctionHow>(JsonNames.Of),
        place["through"]["odd"].Text(),
        place["through"]["even"].Text(),
        place["ties"].Lengths());
}
