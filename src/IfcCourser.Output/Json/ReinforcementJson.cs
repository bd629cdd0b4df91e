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
        json.Lines("bondBeams", wall.BondBeams, BondBeam);
        json.Lines("movementJoints", wall.MovementJoints, MovementJoint);
        json.Lines("embeds", wall.Embeds, Embed);
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
        json.Lines("cornerBars", beam.Corners, BeamCorner);
        json.Member("grout", beam.GroutVolume);
    }

    private static void BarLap(Utf8JsonWriter json, BarLap lap)
    {
        json.WriteNumber("bar", lap.Bar);
        json.Member("from", lap.From);
        json.Member("to", lap.To);
    }

    private static void BeamCorner(Utf8JsonWriter json, BeamCorner corner)
    {
        json.WriteString("with", corner.With);
        json.Member("at", corner.At);
        json.WriteNumber("count", corner.Count);
        json.Member("leg", corner.Leg);
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
    }
}
