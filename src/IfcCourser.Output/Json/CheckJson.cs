using System.Text.Json;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Json;

/// <summary>How walls and openings stand to the module, in our JSON.</summary>
internal static class CheckJson
{
    public static void Opening(Utf8JsonWriter json, OpeningCheck check)
    {
        json.WriteString("state", Of(check.State));
        if (check.Deviation is { } deviation)
        {
            json.Member("leftToLine", deviation.Left);
            json.Member("rightToLine", deviation.Right);
            Optional(json, "sillToCourse", deviation.Sill);
            Optional(json, "headToCourse", deviation.Head);
            json.Member("moveLeft", check.MoveLeft);
            json.Member("moveRight", check.MoveRight);
            json.Member("widening", check.Widening);
        }

        if (check.WhyNot is { } why)
        {
            json.WriteString("whyNot", why);
        }

        if (check.Cost is { } cost)
        {
            json.WriteStartObject("costOfKeeping");
            json.WriteNumber("cutPieces", cost.CutPieces);
            json.WriteNumber("sawCuts", cost.SawCuts);
            json.WriteNumber("shortPieces", cost.ShortPieces);
            json.WriteNumber("shortLaps", cost.ShortLaps);
            json.WriteEndObject();
        }
    }

    public static void Length(Utf8JsonWriter json, LengthCheck check)
    {
        json.Member("way", check.Way);
        json.Member("under", check.Under);
        json.Member("over", check.Over);
        json.WriteBoolean("takenByJoints", check.IsTaken);
    }

    private static string Of(ModuleState state) => state switch
    {
        ModuleState.OnModule => "on-module",
        ModuleState.WidthOff => "width-off",
        ModuleState.NotCoursed => "not-coursed",
        _ => state.ToString().ToLowerInvariant(),
    };

    private static void Optional(Utf8JsonWriter json, string name, Length? length)
    {
        if (length is { } value)
        {
            json.Member(name, value);
        }
    }
}
