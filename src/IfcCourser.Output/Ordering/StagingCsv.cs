using System.Globalization;
using System.Text;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Tables;
using IfcCourser.SettingOut;

namespace IfcCourser.Output.Ordering;

/// <summary>
/// staging.csv: a row for each pack in the order in which packs are opened (RFC 4180, UTF-8). x and y of its middle in the axes of the storey's plans, in mm or
/// inches as the set's units are; turn: of its longer side from x, degrees. Cells of the place are empty where there is no room.
/// </summary>
public static class StagingCsv
{
    /// <param name="layout">With its order.</param>
    public static void Write(Layout layout, Stream stream)
    {
        var text = new OrderText(layout.Rules);
        var numbers = layout.Walls.ToDictionary(wall => wall.Identity.GlobalId, wall => WallNumbers.Sheet(layout, wall), StringComparer.Ordinal);
        var packs = layout.Order!.Staging;
        var axes = packs.Select(pack => pack.Storey).Distinct(StringComparer.Ordinal).Select(storey => (storey, Axes: StoreyAxes.Of(layout, storey))).ToList();
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("pack,delivery,storey,product,width,units,beside,x,y,turn,walls,spare");
        foreach (var pack in packs)
        {
            var plan = axes.Find(known => string.Equals(known.storey, pack.Storey, StringComparison.Ordinal)).Axes;
            var at = pack.Place is { } place ? plan.Measured(place.Middle) : default((Units.Length X, Units.Length Y)?);
            writer.WriteLine(string.Join(',', ((string?[])
            [
                Whole(pack.Number), pack.Delivery, pack.Storey, text.Size(pack.Product), CsvNumber.Of(text.Number(pack.Product.Width!.Value), 4), Whole(pack.Units),
                pack.Place is { } beside ? numbers[beside.Wall] : null,
                at is { } x ? CsvNumber.Of(text.Number(x.X), 2) : null,
                at is { } y ? CsvNumber.Of(text.Number(y.Y), 2) : null,
                pack.Place is { } turned ? CsvNumber.Of(Turn(plan, turned), 1) : null,
                string.Join(' ', pack.Uses.Where(use => use.Units > 0).Select(use => $"{numbers[use.Wall]}:{Whole(use.Units)}")),
                Whole(pack.Spare),
            ]).Select(CsvCell.Of)));
        }
    }

    /// <summary>Of the longer side, from 0 to under 180 degrees.</summary>
    private static double Turn(SetOutAxes axes, StagedPlace place)
    {
        var (from, to) = (axes.Of(place.Middle), axes.Of(place.Middle + place.Along));
        return Math.Round((Math.Atan2(to.Y - from.Y, to.X - from.X) * 180 / Math.PI) + 360, 1) % 180;
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
