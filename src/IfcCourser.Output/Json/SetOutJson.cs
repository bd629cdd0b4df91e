using System.Text.Json;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Json;

/// <summary>The set-out of layout.json: survey axes, and for each storey its edges, control points and bars.</summary>
internal static class SetOutJson
{
    public static void Write(Utf8JsonWriter json, SetOut setOut)
    {
        json.WriteStartObject("setOut");
        json.Line("survey", line =>
        {
            line.WriteString("kind", JsonNames.Of(setOut.Survey.Kind));
            line.WriteString("name", setOut.Survey.Name);
            line.Member("eastings", setOut.Survey.Eastings);
            line.Member("northings", setOut.Survey.Northings);
            line.Member("height", setOut.Survey.Height);
            line.Direction("east", setOut.Survey.East);
            line.WriteNumber("scale", setOut.Survey.Scale);
            if (setOut.TrueNorth is { } north)
            {
                line.Direction("trueNorth", north);
            }
        });
        json.WriteStartArray("storeys");
        foreach (var storey in setOut.Storeys)
        {
            Storey(json, storey);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Storey(Utf8JsonWriter json, StoreySetOut storey)
    {
        json.WriteStartObject();
        json.WriteString("storey", storey.Storey);
        json.Line("axes", line => Axes(line, storey.Axes));
        json.Lines("outlines", storey.Outlines, Outline);
        json.Lines("grid", storey.Grid, (line, grid) =>
        {
            line.WriteString("tag", grid.Tag);
            line.WriteString("family", grid.Family.ToString());
            line.Member("from", grid.From);
            line.Member("to", grid.To);
        });
        json.Lines("checkLines", storey.CheckLines, (line, check) => CheckLine(line, check));
        json.Lines("controlPoints", storey.ControlPoints, ControlPoint);
        json.Lines("diagonals", storey.Diagonals, (line, diagonal) =>
        {
            line.WriteNumber("from", diagonal.From);
            line.WriteNumber("to", diagonal.To);
            line.Member("length", diagonal.Length);
        });
        json.Lines("bars", storey.Bars, Bar);
        json.Lines("findings", storey.Findings, LayoutJson.Finding);
        json.WriteEndObject();
    }

    private static void Axes(Utf8JsonWriter json, SetOutAxes axes)
    {
        json.Member("origin", axes.Origin);
        json.Direction("along", axes.Along);
        json.Line("xFrom", line => ControlLine(line, axes.XFrom));
        json.Line("yFrom", line => ControlLine(line, axes.YFrom));
    }

    private static void ControlLine(Utf8JsonWriter json, ControlLine line)
    {
        json.WriteString("kind", JsonNames.Of(line.Kind));
        json.WriteString("tag", line.Tag);
    }

    private static void Outline(Utf8JsonWriter json, SetOutOutline outline)
    {
        json.WriteString("kind", JsonNames.Of(outline.Kind));
        json.WriteString("name", outline.Name);
        json.Member("top", outline.Top);
        json.WriteStartArray("loop");
        foreach (var point in outline.Loop)
        {
            json.Pair(point);
        }

        json.WriteEndArray();
    }

    private static void CheckLine(Utf8JsonWriter json, CheckLine check)
    {
        ControlLine(json, check.Line);
        json.WriteString("measures", check.IsUpright ? "x" : "y");
        json.Member("at", check.At);
        json.Member("from", check.From);
        json.Member("to", check.To);
    }

    private static void ControlPoint(Utf8JsonWriter json, ControlPoint point)
    {
        json.WriteNumber("number", point.Number);
        json.WriteString("kind", JsonNames.Of(point.Kind));
        json.WriteString("tag", point.Tag);
        json.WriteString("wall", point.Wall);
        json.Member("point", point.Point);
        json.Member("at", point.X, point.Y);
    }

    private static void Bar(Utf8JsonWriter json, BarSetOut bar)
    {
        json.WriteNumber("number", bar.Number);
        json.WriteString("wall", bar.Wall);
        json.WriteString("core", bar.Core);
        json.WriteBoolean("castIn", bar.IsCastIn);
        json.WriteString("foot", JsonNames.Of(bar.Foot));
        json.Member("point", bar.Point);
        json.Member("at", bar.X, bar.Y);
        if (bar.Block is { } block)
        {
            json.Line("block", line =>
            {
                line.WriteString("wall", block.Wall);
                line.WriteNumber("course", block.Course);
                line.Member("joints", block.Before, block.After);
            });
        }

        if (bar.OnFace is { } face)
        {
            json.Line("onFace", line =>
            {
                line.WriteNumber("corner", face.Corner);
                line.Member("at", face.Along, face.Across);
            });
        }
    }
}
