using System.Globalization;
using System.Text;
using IfcCourser.Output.Json;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>first-course-levels.csv: a row for each block of the first course (RFC 4180, UTF-8), mm or in: how far it stands above the level, and what is done with it.</summary>
public static class LevelledCsv
{
    public static void Write(LevelledCourse course, Stream stream)
    {
        var isInch = course.Layout.Rules.Catalog.Units == UnitSystem.Inch;
        var (name, unit) = isInch ? ("in", Length.NanometresPerInch / (double)Length.NanometresPerMm) : ("mm", 1.0);
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine($"wall,name,piece,above_level_{name},work");
        foreach (var block in course.Blocks)
        {
            var off = block.Work == LevelWork.NotRead ? string.Empty : (Math.Round(block.Off / unit, isInch ? 4 : 2) + 0.0).ToString(isInch ? "0.0000" : "0.00", CultureInfo.InvariantCulture);
            writer.WriteLine(string.Join(
                ',', CsvCell.Of(block.Block.Wall.Identity.GlobalId), CsvCell.Of(block.Block.Wall.Identity.Name), CsvCell.Of(block.Block.Piece.Id), off, JsonNames.Of(block.Work)));
        }
    }
}
