using System.Globalization;
using System.Text;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>
/// points.csv: a row for each bar and each control point, for total stations (RFC 4180, UTF-8; comments begin with #). Metres, or
/// international feet in inch sets, with four decimals. Columns: point (number as on the set-out sheet), northing, easting,
/// elevation (of the bar's foot, of the slab's top), code (below), wall (GlobalId), core (id in that wall).
/// </summary>
/// <remarks>
/// Codes: BAR cast into the slab; BARON runs on from the bar of the wall below; BARUP starts over a lintel or beam; CORNER of outer faces; FACE start of a skew wall's left
/// face; SLAB corner; GRID crossing.
/// </remarks>
public static class PointsCsv
{
    public static void Write(Layout layout, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        foreach (var comment in PointsText.Comments(layout))
        {
            writer.WriteLine("# " + comment);
        }

        writer.WriteLine("point,northing,easting,elevation,code,wall,core");
        var unit = layout.Rules.Catalog.Units == UnitSystem.Inch ? PointsText.MmInFoot : PointsText.MmInMetre;
        foreach (var storey in layout.SetOut.Storeys)
        {
            foreach (var bar in storey.Bars)
            {
                writer.WriteLine(Row(bar.Number, layout.SetOut.Survey.Of(bar.Point), unit, Code(bar.Foot), bar.Wall, bar.Core));
            }

            foreach (var point in storey.ControlPoints)
            {
                writer.WriteLine(Row(point.Number, layout.SetOut.Survey.Of(point.Point), unit, Code(point.Kind), point.Wall, null));
            }
        }
    }

    private static string Code(BarFoot foot) => foot switch
    {
        BarFoot.Slab => "BAR",
        BarFoot.BarBelow => "BARON",
        _ => "BARUP",
    };

    private static string Code(ControlPointKind kind) => kind switch
    {
        ControlPointKind.WallCorner => "CORNER",
        ControlPointKind.SkewCorner => "FACE",
        ControlPointKind.SlabCorner => "SLAB",
        _ => "GRID",
    };

    private static string Row(int number, Vector3 place, double unit, string code, string? wall, string? core) => string.Join(',', (string[])
    [
        number.ToString(CultureInfo.InvariantCulture), Number(place.Y / unit), Number(place.X / unit), Number(place.Z / unit), code, CsvCell.Of(wall), CsvCell.Of(core),
    ]);

    private static string Number(double value) => (Math.Round(value, 4) + 0.0).ToString("0.0000", CultureInfo.InvariantCulture);
}
