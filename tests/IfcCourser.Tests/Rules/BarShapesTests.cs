using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Rules;

public sealed class BarShapesTests
{
    /// <summary>BS 8666 shape 11, read in a stockholder's shape table: A + B - 0.5 r - d; 1000 + 300 - 12 - 12 = 1276, up to the next 25 mm.</summary>
    [Fact]
    public void Shape_11_is_as_long_as_the_standard_says() =>
        Assert.Equal(1300, BarShapes.Bent(Length.FromMm(1000), Length.FromMm(300), BarSizes.Find("12 mm")!, BarListForm.Bs8666).Mm);

    /// <summary>BS 8666 table 2 (from memory): r is 2 d up to 16 mm, 3.5 d above.</summary>
    [Theory]
    [InlineData("12 mm", 24)]
    [InlineData("16 mm", 32)]
    [InlineData("20 mm", 70)]
    public void Metric_bends_have_the_radius_of_the_standard(string bar, double radius) =>
        Assert.Equal(radius, BarShapes.Radius(BarSizes.Find(bar)!, BarListForm.Bs8666).Mm);

    /// <summary>ACI 318-19 table 25.3.1 (from memory): hooks of 90 degrees are 6, 8, 10, 12, 14 and 16 in long from No. 3 to No. 8.</summary>
    [Theory]
    [InlineData("No. 3", 6)]
    [InlineData("No. 4", 8)]
    [InlineData("No. 5", 10)]
    [InlineData("No. 6", 12)]
    [InlineData("No. 7", 14)]
    [InlineData("No. 8", 16)]
    public void Standard_hooks_are_as_long_as_the_tables_say_in_lists_of_either_form(string bar, double inches)
    {
        Assert.Equal(inches, BarShapes.HookLeg(BarSizes.Find(bar)!, BarListForm.Aci315, 12).Inches);
        Assert.Equal(inches, BarShapes.HookLeg(BarSizes.Find(bar)!, BarListForm.Bs8666, 12).Inches);
    }

    /// <summary>The catalog's units decide whose form it is: common practice, no source.</summary>
    [Theory]
    [InlineData("us", "aac-in", BarListForm.Aci315)]
    [InlineData("us", "aac-mm", BarListForm.Bs8666)]
    [InlineData("eu", "aac-mm", BarListForm.Bs8666)]
    public void A_metric_catalog_has_the_metric_list(string rules, string catalog, BarListForm form) =>
        Assert.Equal(form, LayoutRules.For(BuiltInRuleSets.Get(rules), IfcCourser.Catalogs.BuiltInCatalogs.Get(catalog), OpeningPolicy.Move).BarListForm);

    /// <summary>Steps of 25 mm (BS 8666, from memory) and of an inch (common practice, no source), upwards where a lap would be shortened.</summary>
    [Theory]
    [InlineData(2426, BarListForm.Bs8666, 2450)]
    [InlineData(2450, BarListForm.Bs8666, 2450)]
    [InlineData(2450, BarListForm.Aci315, 2463.8)]
    public void Bars_that_lap_are_cut_no_shorter_than_asked_for(double mm, BarListForm form, double cut) =>
        Assert.Equal(cut, BarShapes.Lapped(Length.FromMm(mm), form).Mm);

    [Theory]
    [InlineData(2449, BarListForm.Bs8666, 2425)]
    [InlineData(2450, BarListForm.Bs8666, 2450)]
    [InlineData(2450, BarListForm.Aci315, 2438.4)]
    public void Straight_bars_are_cut_to_the_step_of_the_list(double mm, BarListForm form, double cut) =>
        Assert.Equal(cut, BarShapes.Straight(Length.FromMm(mm), form).Mm);
}
