using System.Globalization;
using System.Text;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>
/// readings.csv: the shooting list as a form that the slab command reads (RFC 4180, UTF-8; comments begin with #). A row for each place where the
/// slab is read, its plan coordinates in the axes of points.csv, its rod reading to be filled in; then one for each cast-in bar, to be filled in with
/// where it stands as built.
/// </summary>
public static class ReadingsCsv
{
    public static void Write(Layout layout, Stream stream)
    {
        var isInch = layout.Rules.Catalog.Units == UnitSystem.Inch;
        var (name, unit) = isInch ? ("ft", PointsText.MmInFoot) : ("m", PointsText.MmInMetre);
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        foreach (var comment in PointsText.ReadingComments(layout))
        {
            writer.WriteLine("# " + comment);
        }

        writer.WriteLine($"point,easting_{name},northing_{name},hi_{name},rod_{name},code,wall,core,place,storey");
        foreach (var point in layout.ShootingList)
        {
            var at = layout.SetOut.Survey.Of(point.Point);
            writer.WriteLine(Row(point.Number, Number(at.X / unit), Number(at.Y / unit), "SLAB", point.Wall, string.Empty, point.Kind.ToString().ToLowerInvariant(), point.Storey));
        }

        foreach (var (storey, bar) in layout.SetOut.Storeys.SelectMany(storey => storey.Bars.Where(bar => bar.IsCastIn).Select(bar => (storey.Storey, bar))))
        {
            writer.WriteLine(Row(bar.Number, string.Empty, string.Empty, "BAR", bar.Wall, bar.Core, "bar", storey));
        }
    }

    private static string Row(int number, string easting, string northing, string code, string wall, string core, string place, string? storey) => string.Join(
        ',', number.ToString(CultureInfo.InvariantCulture), easting, northing, string.Empty, string.Empty, code, CsvCell.Of(wall), CsvCell.Of(core), place, CsvCell.Of(storey));

    private static string Number(double value) => (Math.Round(value, 4) + 0.0).ToString("0.0000", CultureInfo.InvariantCulture);
}
