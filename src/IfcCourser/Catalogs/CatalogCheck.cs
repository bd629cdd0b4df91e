using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>What must hold between the values of a catalog, so that nothing behind it checks again.</summary>
internal static class CatalogCheck
{
    public static void Unit(SettingsTable table, Catalog catalog)
    {
        table.CheckPositive("length", catalog.UnitLength);
        table.CheckPositive("height", catalog.UnitHeight);
        table.Check(
            catalog.PartLengths.All(part => part > Length.Zero && part < catalog.UnitLength),
            "part-lengths", "must be more than nothing and shorter than the unit");
        table.Check(
            catalog.OtherHeights.All(height => height > Length.Zero && height != catalog.UnitHeight),
            "other-heights", "must be more than nothing and differ from the unit's height");
        table.Check(!catalog.Widths.IsEmpty, "widths", "must name at least one width");
        table.Check(
            catalog.Widths.Select(width => width.Actual).Distinct().Count() == catalog.Widths.Length, "widths", "names a width twice");
    }

    public static void Cutting(SettingsTable table, Catalog catalog)
    {
        table.CheckPositive("grid", catalog.CutGrid);
        table.Check(catalog.Kerf >= Length.Zero, "kerf", "must not be negative");
        table.CheckPositive("least-piece", catalog.MinPiece);
        table.Check(catalog.MinPiece <= catalog.UnitLength, "least-piece", "must not be more than the unit's length");
        table.Check(
            catalog.PreferredPiece >= catalog.MinPiece && catalog.PreferredPiece <= catalog.UnitLength,
            "preferred-piece", "must lie between the least piece and the unit's length");
        table.Check(
            catalog.LeastRip is not { } rip || (rip > Length.Zero && rip <= catalog.UnitHeight),
            "least-rip", "must be more than nothing and not more than the unit's height; leave it out where units are never ripped");
    }

    public static void Layout(SettingsTable table, Catalog catalog)
    {
        table.CheckPositive("module", catalog.Module);
        table.CheckPositive("least-pier", catalog.LeastPier);
        table.CheckPositive("lintel-bearing", catalog.LintelBearing);
        table.Check(catalog.LeastPier >= catalog.MinPiece, "least-pier", "must not be less than the least piece");
    }
}
