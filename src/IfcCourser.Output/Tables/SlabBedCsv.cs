using System.Globalization;
using System.Text;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>
/// slab-bed.csv: a row for each block of the first course (RFC 4180, UTF-8), mm or in: its bed at the least, the most and in the mean, and how much is
/// to be taken off a high or filled into a low under it.
/// </summary>
public static class SlabBedCsv
{
    public static void Write(SlabSurvey survey, Stream stream)
    {
        var isInch = survey.Layout.Rules.Catalog.Units == UnitSystem.Inch;
        var (name, unit) = isInch ? ("in", Length.NanometresPerInch / (double)Length.NanometresPerMm) : ("mm", 1.0);
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine($"wall,name,piece,from_{name},to_{name},bed_least_{name},bed_most_{name},bed_mean_{name},take_off_{name},fill_{name},beyond_readings");
        foreach (var bed in survey.Beds)
        {
            var (wall, piece) = (bed.Block.Wall.Identity, bed.Block.Piece);
            writer.WriteLine(string.Join(
                ',', CsvCell.Of(wall.GlobalId), CsvCell.Of(wall.Name), CsvCell.Of(piece.Id), Number(piece.From.Mm), Number(piece.To.Mm), Number(bed.Least), Number(bed.Most),
                Number(bed.Mean), Number(bed.High), Number(bed.Low), bed.IsOutside ? "yes" : "no"));
        }

        string Number(double mm) => (Math.Round(mm / unit, isInch ? 4 : 2) + 0.0).ToString(isInch ? "0.0000" : "0.00", CultureInfo.InvariantCulture);
    }
}
