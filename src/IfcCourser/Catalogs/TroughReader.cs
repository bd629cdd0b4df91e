using IfcCourser.Settings;

namespace IfcCourser.Catalogs;

/// <summary>Reads a trough unit of a catalog.</summary>
internal static class TroughReader
{
    /// <param name="table">Its table.</param>
    /// <param name="catalog">The catalog it belongs to: its unit and widths are what troughs are measured by.</param>
    public static TroughUnit Read(SettingsTable table, Catalog catalog)
    {
        var trough = new TroughUnit(
            table.Text("name"), table.Has("widths") ? table.Lengths("widths") : [], table.Length("shell"), table.Length("bottom"));
        table.Check(
            trough.Widths.All(width => catalog.Widths.Any(own => own.Actual == width || own.Nominal == width)),
            "widths", "names a width that no unit of the catalog has");
        table.CheckPositive("shell", trough.Shell);
        table.CheckPositive("bottom", trough.Bottom);
        // A catalog without widths is a fault of its own.
        var widths = trough.Widths.IsEmpty ? catalog.Widths.Select(width => width.Actual) : trough.Widths;
        table.Check(widths.All(width => trough.Shell * 2 < width), "shell", "leaves no hollow in the narrowest width");
        table.Check(trough.Bottom < catalog.UnitHeight, "bottom", "must be less than the unit's height");
        return trough;
    }
}
