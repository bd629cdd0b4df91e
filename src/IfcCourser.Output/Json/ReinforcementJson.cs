using System.Text.Json;
using IfcCourser.Geometry;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Json;

/// <summary>What a wall of layout.json holds beside its blocks: lintels, cores, bond beams, movement joints, embeds.</summary>
internal static class ReinforcementJson
{
    public static void Members(Utf8JsonWriter json, WallLayout wall)
    {
        json.Lines("lintels", wall.Lintels, Lintel);
        json.Lines("cores", wall.Cores, (line, core) => Core(line, core, wall.Wall.Frame.Origin.Z));
        if (!wall.CornerCores.IsEmpty)
        {
            json.Lines("cornerCores", wall.CornerCores, CornerCore);
        }

        json.Lines("bondBeams", wall.BondBeams, BondBeam);
        json.Lines("movementJoints", wall.MovementJoints, MovementJoint);
        json.Lines("embeds", wall.Embeds, Embed);
    }

    /// <summary>Equal bars of a wall.</summary>
    public static void ScheduleRow(Utf8JsonWriter json, BarScheduleRow row)
    {
        json.WriteString("mark", row.Mark);
        json.WriteString("wall", row.Wall);
        json.WriteString("size", row.Size.Name);
        json.WriteString("steel", row.Steel);
        json.WriteString("use", JsonNames.Of(row.Use));
        json.WriteNumber("number", row.Number);
        json.WriteString("shape", row.Shape);
        json.Member("a", row.A);
        json.Member("b", row.B);
        json.Member("radius", row.Radius);
        json.Member("length", row.Length);
        json.Member("mass", row.Mass);
    }

    private static void Lintel(Utf8JsonWriter json, Lintel lintel)
    {
        json.WriteString("id", lintel.Id);
        json.WriteString("opening", lintel.Opening);
        json.WriteString("kind", JsonNames.Of(lintel.Kind));
        json.Member("from", lintel.From);
        json.Member("to", lintel.To);
        json.Member("bottom", lintel.Bottom);
        json.Member("top", lintel.Top);
        json.Member("bearingLeft", lintel.BearingLeft);
        json.Member("bearingRight", lintel.BearingRight);
        json.WriteString("product", lintel.Product);
        json.Member("restsOn", lintel.RestsOn);
    }

    private static void Core(Utf8JsonWriter json, Core core, double baseZ)
    {
        json.WriteString("id", core.Id);
        json.Member("at", core.At);
        json.Member("across", core.Across);
        json.Member("bottom", core.Bottom);
        json.Member("top", core.Top);
        json.Member("diameter", core.Diameter);
        json.WriteString("bar", core.Bar);
        json.Member("why", core.Why);
        json.Member("point", new Vector3(core.Point.X, core.Point.Y, baseZ + core.Bottom.Mm));
        json.Member("play", core.PlayMinus, core.PlayPlus);
        json.Member("sharedWith", core.SharedWith);
        if (core.Bars is { } bars)
        {
            json.WriteStartObject("bars");
            Bars(json, bars);
            json.WriteEndObject();
        }
    }

    private static void CornerCore(Utf8JsonWriter json, CornerCore core)
    {
        json.WriteString("id", core.Id);
        json.WriteString("wall", core.Wall);
        json.WriteString("core", core.Core);
        json.Member("at", core.At);
        json.Member("across", core.Across);
        json.Member("bottom", core.Bottom);
        json.Member("top", core.Top);
        json.Member("diameter", core.Diameter);
    }

    private static void Bars(Utf8JsonWriter json, CoreBars bars)
    {
        json.WriteNumber("count", bars.Count);
        json.Member("diameter", bars.Diameter);
        Intervals(json, "set", bars.Set);
        json.Member("marks", bars.Marks);
        json.WriteString("splice", bars.IsCoupled ? "coupler" : "lap");
        Intervals(json, "splices", bars.Splices);
        if (bars.Starter is { } starter)
        {
            json.WriteStartObject("starter");
            json.WriteString("mark", starter.Mark);
            json.WriteString("foot", starter.IsHooked ? "hook" : "straight");
            json.Member("embedment", starter.Embedment);
            json.Member("hookLeg", starter.HookLeg);
            json.Member("stickUp", starter.StickUp);
            json.WriteEndObject();
        }

        if (bars.RunsOnFrom is { } below)
        {
            json.WriteStartObject("runsOnFrom");
            json.WriteString("wall", below.Wall);
            json.WriteString("core", below.Core);
            json.WriteEndObject();
        }

        json.Member("groutVolume", bars.GroutVolume);
        Intervals(json, "lifts", bars.Lifts);
    }

    private static void Intervals(Utf8JsonWriter json, string name, IEnumerable<Interval> intervals)
    {
        json.WriteStartArray(name);
        foreach (var interval in intervals)
        {
            json.Pair(interval.From, interval.To);
        }

        json.WriteEndArray();
    }

    private static void BondBeam(Utf8JsonWriter json, BondBeam beam)
    {
        json.WriteString("id", beam.Id);
        json.WriteString("kind", JsonNames.Of(beam.Kind));
        if (beam.Course is { } course)
        {
            json.WriteNumber("course", course);
        }

        json.Member("bottom", beam.Bottom);
        json.Member("top", beam.Top);
        json.Member("from", beam.From);
        json.Member("to", beam.To);
        if (beam.Outline is { } outline)
        {
            json.Member("outline", outline);
        }

        json.Member("why", beam.Why);
        json.WriteString("bars", beam.Bars);
        json.WriteNumber("barCount", beam.BarCount);
        json.WriteString("barSize", beam.BarSize);
        json.Member("lap", beam.Lap);
        json.Lines("laps", beam.Laps, BarLap);
        json.Lines("steel", beam.Steel, BeamBar);
        json.Lines("cornerBars", beam.Corners, BeamCorner);
        json.Member("grout", beam.GroutVolume);
    }

    private static void BarLap(Utf8JsonWriter json, BarLap lap)
    {
        json.WriteNumber("bar", lap.Bar);
        json.Member("from", lap.From);
        json.Member("to", lap.To);
    }

    private static void BeamBar(Utf8JsonWriter json, BeamBar bar)
    {
        json.WriteNumber("bar", bar.Bar);
        json.Member("from", bar.From);
        json.Member("to", bar.To);
        json.Member("size", bar.Size);
        json.Member("across", bar.Across);
        json.Member("height", bar.Height);
        json.WriteString("mark", bar.Mark);
    }

    private static void BeamCorner(Utf8JsonWriter json, BeamCorner corner)
    {
        json.WriteString("with", corner.With);
        json.Member("at", corner.At);
        json.WriteNumber("count", corner.Count);
        json.Member("leg", corner.Leg);
        json.WriteStartArray("bars");
        foreach (var bar in corner.Bars)
        {
            json.WriteStartObject();
            json.Member("across", bar.Across);
            json.Member("otherAcross", bar.OtherAcross);
            json.Member("height", bar.Height);
            json.WriteString("mark", bar.Mark);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void MovementJoint(Utf8JsonWriter json, MovementJoint joint)
    {
        json.Member("at", joint.At);
        json.Member("width", joint.Width);
        json.Member("bottom", joint.Bottom);
        json.Member("top", joint.Top);
        json.WriteString("why", joint.Why);
    }

    private static void Embed(Utf8JsonWriter json, Embed embed)
    {
        json.WriteString("kind", embed.Kind);
        json.Member("at", embed.At);
        json.Member("z", embed.Z);
        json.WriteString("note", embed.Note);
        json.WriteString("size", embed.Size);
    }
}
