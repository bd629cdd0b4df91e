using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Catalogs;

public sealed class OrderingReaderTests
{
    public static TheoryData<string> Names => [.. BuiltInCatalogs.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_built_in_catalog_can_be_ordered_from(string name)
    {
        var catalog = BuiltInCatalogs.Get(name);

        Assert.All(catalog.Widths, width => Assert.NotNull(catalog.PalletContent("unit", catalog.UnitHeight, width.Actual)));
        Assert.InRange(catalog.Mass("unit", catalog.UnitLength, catalog.UnitHeight, catalog.Widths[1].Actual)!.Value, 5, 30);
        Assert.NotNull(catalog.Ordering.JointMortar.LitresPerBag);
        Assert.NotNull(catalog.Ordering.LevellingMortar.LitresPerBag);
    }

    [Fact]
    public void Amounts_are_read_in_either_system()
    {
        var inch = Read("density = \"31.2 lb/ft3\"\nlift-limit = \"50 lb\"\n[ordering.joint-mortar]\npowder = \"1.4 kg/l\"\nbag = \"25 kg\"");

        Assert.Equal((499.8, 22.68), (Math.Round(inch.Density!.Value, 1), Math.Round(inch.LiftLimit!.Value, 2)));
        Assert.Equal(17.857, inch.JointMortar.LitresPerBag!.Value, 3);
    }

    [Fact]
    public void What_is_left_out_is_not_known()
    {
        var data = Read("unit-waste-percent = 3");

        Assert.Null(data.Density);
        Assert.Null(data.JointMortar.LitresPerBag);
        Assert.Empty(data.Pallets);
        Assert.Equal(3, data.UnitWastePercent);
    }

    [Fact]
    public void A_pallet_of_the_product_comes_before_one_of_all()
    {
        var catalog = CatalogReader.Read(Text("pallets = [{ width = \"240 mm\", units = 40 }, { product = \"cored unit\", width = \"240 mm\", units = 36 }]"), "f.toml").Value!;
        var (height, width) = (catalog.UnitHeight, Length.FromMm(240));

        Assert.Equal((40, 36), (catalog.PalletContent("unit", height, width), catalog.PalletContent("cored unit", height, width)));
        Assert.Null(catalog.PalletContent("part unit", height, width));
        Assert.Null(catalog.PalletContent("unit", Length.FromMm(124), width));
        Assert.Null(catalog.PalletContent("unit", height, Length.FromMm(300)));
    }

    [Theory]
    [InlineData("density = \"500\"", "ordering.density is \"500\"; write a number from 0.000001 to 1000000 and one of kg/m3, lb/ft3")]
    [InlineData("density = \"2000000 kg/m3\"", "ordering.density is \"2000000 kg/m3\"")]
    [InlineData("density = \"0 kg/m3\"", "ordering.density is \"0 kg/m3\"")]
    [InlineData("density = 500", "ordering.density is not an amount in quotes, such as \"25 kg/m3\"")]
    [InlineData("moisture-percent = 101", "ordering.moisture-percent must be a whole number from 0 to 100")]
    [InlineData("cored-units = \"works\"", "ordering.cored-units is \"works\", which is none of site, factory, cells")]
    [InlineData("pallets = [{ width = \"123 mm\", units = 40 }]", "ordering.pallets.width is a width that no unit of the catalog has")]
    [InlineData("pallets = [{ width = \"240 mm\", units = 0 }]", "ordering.pallets.units must be a whole number from 1 to 10000")]
    [InlineData("pallets = [{ product = \"brick\", width = \"240 mm\", units = 4 }]", "ordering.pallets.product is \"brick\", which is none of unit, part unit, cored unit, trough unit")]
    [InlineData("pallets = [{ height = \"77 mm\", width = \"240 mm\", units = 4 }]", "ordering.pallets.height is a height that no unit of the catalog has")]
    [InlineData("pallets = [{ width = \"240 mm\", units = 4 }, { width = \"240 mm\", units = 5 }]", "ordering.pallets names a product, width and height twice")]
    [InlineData("[ordering.joint-mortar]\nbedded = \"116 mm\"", "ordering.joint-mortar.bedded must not be more than the narrowest unit's width")]
    [InlineData("[ordering.joint-mortar]\nbags = \"25 kg\"", "there is no key \"ordering.joint-mortar.bags\"")]
    [InlineData("[ordering.staging]\npack-length = \"1250 mm\"\npack-width = \"1000 mm\"\nstrip = \"600 mm\"\nreach = \"20601 mm\"", "ordering.staging.reach must not leave room for more than 20 rows of packs")]
    [InlineData("[ordering.staging]\npack-length = \"1250 mm\"\npack-width = \"1000 mm\"\nstrip = \"600 mm\"\nreach = \"500 mm\"", "ordering.staging.reach must not be less than strip")]
    public void A_wrong_value_is_named(string ordering, string problem)
    {
        var fault = CatalogReader.Read(Text(ordering), "f.toml").Fault;

        Assert.Contains(problem, fault?.ToString(), StringComparison.Ordinal);
    }

    private static OrderingData Read(string ordering)
    {
        var outcome = CatalogReader.Read(Text(ordering), "f.toml");
        Assert.True(outcome.IsOk, outcome.Fault?.ToString());
        return outcome.Value.Ordering;
    }

    /// <summary>The built-in metric catalog with another [ordering].</summary>
    private static string Text(string ordering)
    {
        var text = SettingsReader.BuiltInText("aac-mm")!;
        return text[..text.IndexOf("[ordering]", StringComparison.Ordinal)] + "[ordering]\n" + ordering + "\n";
    }
}
