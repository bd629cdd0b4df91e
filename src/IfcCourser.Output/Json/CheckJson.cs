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

    public static void WallLength(Utf8JsonWriter json, LengthCheck check)
    {
        json.Member("way", check.Way);
        json.Member("under", check.Under);
        json.Member("over", check.Over);
        json.WriteBoolean("takenByJoints", check.IsTaken);
    }

    public static OpeningCheck ReadOpening(JsonPlace check) => new(
        check["state"].Choice<ModuleState>(Of),
        check.Optional("leftToLine") is { } left
            ? new OpeningDeviation(left.Length(), check["rightToLine"].Length(), check.Optional("sillToCourse")?.Length(), check.Optional("headToCourse")?.Length())
            : null,
        check.Optional("moveLeft")?.Length() ?? default,
        check.Optional("moveRight")?.Length() ?? default,
        check.Optional("whyNot")?.Text())
    {
        Cost = check.Optional("costOfKeeping") is { } cost
            ? new KeepCost(Count(cost, "cutPieces"), Count(cost, "sawCuts"), Count(cost, "shortPieces"), Count(cost, "shortLaps"))
            : null,
    };

    /// <param name="check">Of the wall.</param>
    /// <param name="length">Of its run.</param>
    public static LengthCheck ReadLength(JsonPlace check, Length length) =>
        new(length, check["under"].Length(), check["over"].Length(), check["takenByJoints"].Flag());

    /// <summary>Less where negative.</summary>
    private static int Count(JsonPlace cost, string name) => cost[name].Whole(int.MinValue);

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
