using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Rules;

/// <summary>Millimetres in length units: ISO 80000-3; international foot 304.8 mm; US survey foot 1200/3937 m (NIST SP 811, 2008, app. B.6).</summary>
public sealed class DefaultSetsTests
{
    [Theory]
    [InlineData(25.4)]
    [InlineData(304.8)]
    [InlineData(1_200_000 / 3937.0)]
    [InlineData(914.4)]
    public void Models_in_inches_feet_and_yards_take_the_inch_sets(double unit) =>
        Assert.Equal((UnitSystem.Inch, "aac-in", "us"), Chosen(unit));

    [Theory]
    [InlineData(0.001)]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(1000)]
    [InlineData(1_000_000)]
    public void Models_in_metres_and_their_parts_take_the_metric_sets(double unit) =>
        Assert.Equal((UnitSystem.Metric, "aac-mm", "eu"), Chosen(unit));

    private static (UnitSystem System, string Catalog, string Rules) Chosen(double unit)
    {
        var system = DefaultSets.SystemOf(unit);
        return (system, DefaultSets.Catalog(system), DefaultSets.Rules(system));
    }
}
