using System.Collections.Immutable;
using IfcCourser.Settings;

namespace IfcCourser.Catalogs;

/// <summary>Reads what orders are reckoned with. Every key may be left out: what is not known is said in the order.</summary>
internal static class OrderingReader
{
    private const double KilogramsPerPound = 0.45359237;

    private const double LitresPerCubicFoot = 28.316846592;

    private const int MostPercent = 100;

    private const int MostUnits = 10_000;

    /// <param name="table">Its table.</param>
    /// <param name="catalog">The catalog it belongs to: products and widths are its own.</param>
    public static OrderingData Read(SettingsTable table, Catalog catalog)
    {
        var data = new OrderingData
        {
            Density = table.Has("density") ? table.Measure("density", ("kg/m3", 1), ("lb/ft3", KilogramsPerPound / LitresPerCubicFoot * 1000)) : null,
            MoisturePercent = Percent(table, "moisture-percent"),
            LiftLimit = table.Has("lift-limit") ? Mass(table, "lift-limit") : null,
            UnitWastePercent = Percent(table, "unit-waste-percent"),
            GroutWastePercent = Percent(table, "grout-waste-percent"),
            Cored = table.Has("cored-units")
                ? table.Choice("cored-units", ("site", CoredUnits.Site), ("factory", CoredUnits.Factory), ("cells", CoredUnits.Cells))
                : CoredUnits.Site,
            Pallets = [.. table.Tables("pallets").Select(pallet => Pallet(pallet, catalog))],
        };
        table.Check(
            data.Pallets.Select(pallet => (pallet.Product, pallet.Width, pallet.Height)).Distinct().Count() == data.Pallets.Length, "pallets", "names a product, width and height twice");
        return data with
        {
            Staging = table.OptionalTable("staging") is { } staging ? Staging(staging) : null,
            JointMortar = table.OptionalTable("joint-mortar") is { } joints ? Mortar(joints, catalog) : data.JointMortar,
            LevellingMortar = table.OptionalTable("levelling-mortar") is { } bed ? Mortar(bed, catalog) : data.LevellingMortar,
        };
    }

    private static PalletContent Pallet(SettingsTable table, Catalog catalog)
    {
        string[] products = [OrderingData.Unit, OrderingData.PartUnit, OrderingData.CoredUnit, .. catalog.Troughs.Select(trough => trough.Name)];
        var pallet = new PalletContent(
            table.Has("product") ? table.Text("product") : null, table.Length("width"), table.OptionalLength("height"), table.Whole("units", 1, MostUnits));
        table.Check(
            pallet.Product is null || products.Contains(pallet.Product, StringComparer.Ordinal),
            "product", $"is \"{pallet.Product}\", which is none of {string.Join(", ", products)}");
        table.Check(
            pallet.Height is not { } height || height == catalog.UnitHeight || catalog.OtherHeights.Contains(height), "height", "is a height that no unit of the catalog has");
        table.Check(
            catalog.Widths.Any(own => own.Actual == pallet.Width || own.Nominal == pallet.Width), "width", "is a width that no unit of the catalog has");
        return pallet;
    }

    private static StagingData Staging(SettingsTable table)
    {
        var data = new StagingData(table.PositiveLength("pack-length"), table.PositiveLength("pack-width"), table.LengthFromZero("strip"), table.LengthFromZero("reach"));
        table.Check(data.PackWidth <= data.PackLength, "pack-width", "must not be more than pack-length");
        table.Check(data.Strip <= data.Reach, "reach", "must not be less than strip");
        table.Check(data.IsNear, "reach", FormattableString.Invariant($"must not leave room for more than {StagingData.MostRows} rows of packs"));
        return data;
    }

    private static MortarData Mortar(SettingsTable table, Catalog catalog)
    {
        var mortar = new MortarData(
            table.Has("powder") ? table.Measure("powder", ("kg/l", 1), ("lb/ft3", KilogramsPerPound / LitresPerCubicFoot)) : null,
            table.Has("bag") ? Mass(table, "bag") : null,
            Percent(table, "loss-percent"),
            table.Has("spread") ? table.PositiveLength("spread") : null,
            table.Has("bedded") ? table.PositiveLength("bedded") : null);
        table.Check(mortar.Bedded is not { } bedded || bedded <= catalog.Widths.Min(width => width.Actual), "bedded", "must not be more than the narrowest unit's width");
        return mortar;
    }

    private static double Mass(SettingsTable table, string key) => table.Measure(key, ("kg", 1), ("lb", KilogramsPerPound));

    private static int Percent(SettingsTable table, string key) => table.Has(key) ? table.Whole(key, 0, MostPercent) : 0;
}
