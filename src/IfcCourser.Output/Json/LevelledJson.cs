using System.Text.Json;
using IfcCourser.Slabs;

namespace IfcCourser.Output.Json;

/// <summary>slab.json of the second stage: each block of the first course high or low, and what is done with it.</summary>
/// <remarks>mm. datum: top of the lowest first course in the heights of the readings.</remarks>
public static class LevelledJson
{
    /// <summary>Writes UTF-8 with a line feed at the end; the same survey gives the same bytes.</summary>
    public static void Write(LevelledCourse course, Stream stream)
    {
        using (var json = new Utf8JsonWriter(stream, LayoutJson.Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", "ifccourser.slab/1");
            json.WriteString("stage", "levelled");
            json.WriteString("storey", course.Storey);
            json.Member("datum", course.Level);
            json.WriteString("heights", JsonNames.Of(course.Readings.Heights));
            json.Line("limits", line =>
            {
                line.Member("step", course.Step);
                line.Member("range", course.Range);
            });
            json.Lines("readings", course.Readings.Levels, (line, reading) =>
            {
                line.WriteString("point", reading.Point);
                line.Member("at", reading.Plan);
                line.Member("height", reading.Height);
            });
            json.Lines("blocks", course.Blocks, Block);
            json.Lines("tolerances", course.Tolerances, ToleranceJson.Write);
            json.Lines("findings", course.Findings, LayoutJson.Finding);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    private static void Block(Utf8JsonWriter json, LevelledBlock block)
    {
        json.WriteString("wall", block.Block.Wall.Identity.GlobalId);
        json.WriteString("piece", block.Block.Piece.Id);
        json.WriteString("work", JsonNames.Of(block.Work));
        if (block.Work != LevelWork.NotRead)
        {
            json.Member("off", block.Off);
        }
    }
}
