using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>Reads a lintel of a catalog.</summary>
internal static class LintelReader
{
    private const int MostClasses = 9;

    private const int MostCourses = 10;

    /// <param name="table">Its table.</param>
    /// <param name="catalog">The catalog it belongs to: its courses and widths are what lintels are measured by.</param>
    public static LintelProduct Read(SettingsTable table, Catalog catalog)
    {
        var span = table.Length("max-clear-span");
        table.CheckPositive("max-clear-span", span);
        var lintel = new LintelProduct
        {
            Name = table.Text("name"),
            Kind = table.Choice("kind", ("solid", LintelKind.Solid), ("trough", LintelKind.Trough)),
            MaxClearSpan = span,
            Height = Height(table, catalog),
            Widths = table.Has("widths") ? table.Lengths("widths") : [],
            LoadClass = table.Has("load-class") ? table.Whole("load-class", 1, MostClasses) : 1,
            Bearing = table.OptionalLength("bearing"),
            Lengths = table.Has("lengths") ? [.. table.Lengths("lengths").Order()] : [],
        };
        table.Check(
            lintel.Widths.All(width => catalog.Widths.Any(own => own.Actual == width || own.Nominal == width)),
            "widths", "names a width that no unit of the catalog has");
        table.Check(lintel.Bearing is not { } bearing || bearing > Length.Zero, "bearing", "must be more than nothing");
        table.Check(
            lintel.Lengths.All(length => length > lintel.Bearing.GetValueOrDefault(catalog.LintelBearing) * 2),
            "lengths", "must leave a span between the bearings");
        return lintel;
    }

    /// <summary>Whole courses with the bed joints between them, or a height of its own.</summary>
    private static Length Height(SettingsTable table, Catalog catalog)
    {
        if (table.OptionalLength("height") is not { } height)
        {
            return (catalog.CoursePitch * table.Whole("courses", 1, MostCourses)) - catalog.BedJoint.Nominal;
        }

        table.CheckPositive("height", height);
        table.Check(!table.Has("courses"), "height", "and courses are both given");
        return height;
    }
}
