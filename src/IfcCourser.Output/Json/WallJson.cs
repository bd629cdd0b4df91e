using System.Text.Json;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Json;

/// <summary>A wall of layout.json.</summary>
internal static class WallJson
{
    public static void Coursed(Utf8JsonWriter json, Layout layout, WallLayout wall)
    {
        json.WriteStartObject();
        Identity(json, wall.Identity);
        json.WriteString("status", "coursed");
        json.Line("frame", line => Frame(line, wall.Frame));
        Body(json, wall.Wall.Body);
        json.Member("outline", wall.Outline);
        json.WriteString("group", wall.Group);
        json.Member("levelLine", wall.LevelLine);
        if (wall.LengthCheck is { } check)
        {
            json.Line("lengthOnModule", line => CheckJson.WallLength(line, check));
        }

        json.Lines("openings", wall.Openings, Opening);
        json.Line("moduleLines", line =>
        {
            line.Member("start", wall.ModuleLines.Start);
            line.Member("pitch", wall.ModuleLines.Pitch);
        });
        json.Line("ends", line =>
        {
            line.WritePropertyName("start");
            line.Line(end => End(end, layout, wall.Wall.Start));
            line.WritePropertyName("end");
            line.Line(end => End(end, layout, wall.Wall.End));
        });
        CourseJson.Courses(json, wall.Courses);
        ReinforcementJson.Members(json, wall);
        json.Line("quantities", line => Quantities(line, wall.Quantities));
        json.Lines("findings", wall.Findings, LayoutJson.Finding);
        json.WriteEndObject();
    }

    public static void Skipped(Utf8JsonWriter json, SkippedWall wall)
    {
        json.WriteStartObject();
        Identity(json, wall.Identity);
        json.WriteString("status", "skipped");
        json.WriteString("reason", wall.Reason.Code.Id);
        if (wall.Body is { } body)
        {
            Body(json, body);
        }

        json.Lines("findings", [wall.Reason], LayoutJson.Finding);
        json.WriteEndObject();
    }

    private static void Identity(Utf8JsonWriter json, WallIdentity identity)
    {
        json.WriteString("globalId", identity.GlobalId);
        json.WriteNumber("stepId", identity.StepId);
        json.WriteString("name", identity.Name);
        json.WriteString("storey", identity.Storey);
        json.WriteString("type", identity.Type);
    }

    private static void Frame(Utf8JsonWriter json, WallFrame frame)
    {
        json.Member("origin", frame.Origin);
        json.Direction("direction", frame.Direction);
        json.Direction("normal", frame.Normal);
        json.Member("length", frame.Length);
        json.Member("thickness", frame.Thickness);
        if (frame.Curve is { } curve)
        {
            json.Line("curve", line =>
            {
                line.Member("centre", curve.Centre);
                line.Member("radius", curve.Radius);
            });
        }
    }

    private static void Body(Utf8JsonWriter json, BodyFacts body) => json.Line("body", line =>
    {
        line.Member("netVolume", body.NetVolume);
        line.Member("grossVolume", body.GrossVolume);
        line.Member("min", body.Min);
        line.Member("max", body.Max);
    });

    private static void Opening(Utf8JsonWriter json, OpeningLayout opening)
    {
        json.WriteString("globalId", opening.Opening.GlobalId);
        json.WriteString("name", opening.Opening.Name);
        json.WriteString("kind", JsonNames.Of(opening.Opening.Kind));
        json.Member("model", opening.Opening.Model);
        json.Member("design", opening.Design);
        json.Member("placed", opening.Placed);
        json.WriteBoolean("onModule", opening.OnModule);
        if (opening.Check is { } check)
        {
            json.WriteStartObject("check");
            CheckJson.Opening(json, check);
            json.WriteEndObject();
        }

        if (opening.Opening.Outline is { } outline)
        {
            json.Member("outline", outline);
        }

        if (opening.Opening.StepId is { } stepId)
        {
            json.WriteNumber("stepId", stepId);
        }

        if (opening.Opening.FillingId is { } filling)
        {
            json.WriteString("filling", filling);
        }

        if (opening.Opening.FillingStepId is { } fillingStepId)
        {
            json.WriteNumber("fillingStepId", fillingStepId);
        }

        if (opening.Opening.IsFixed)
        {
            json.WriteBoolean("fixed", true);
        }
    }

    private static void End(Utf8JsonWriter json, Layout layout, WallEnd end)
    {
        json.WriteString("kind", JsonNames.Of(end.Kind));
        json.Member("with", end.With.Select(index => layout.WallIds[index]));
        if (end.Slant != Length.Zero)
        {
            json.Member("slant", end.Slant);
        }
    }

    private static void Quantities(Utf8JsonWriter json, WallQuantities quantities)
    {
        json.Member("grossArea", quantities.GrossArea);
        json.Member("openingArea", quantities.OpeningArea);
        json.Member("netArea", quantities.NetArea);
        json.Member("netVolume", quantities.NetVolume);
        json.WriteNumber("fullUnits", quantities.FullUnits);
        json.WriteNumber("partUnits", quantities.PartUnits);
        json.WriteNumber("troughUnits", quantities.TroughUnits);
        json.Member("beamGrout", quantities.BeamGrout);
    }
}
