using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Rules;

/// <summary>Bars and laps against the published tables.</summary>
public sealed class BarSizesTests
{
    private const double PoundsPerFoot = 0.45359237 / 0.3048;

    /// <summary>ASTM A615 table 1 (checkvalues.csv Q-BAR-3, -6, -7, -8, -9, -10, -11, -14, -18): lb/ft, in, in2.</summary>
    [Theory]
    [InlineData("No. 3", 0.376, 0.375, 0.11)]
    [InlineData("No. 4", 0.668, 0.500, 0.20)]
    [InlineData("No. 5", 1.043, 0.625, 0.31)]
    [InlineData("No. 6", 1.502, 0.750, 0.44)]
    [InlineData("No. 7", 2.044, 0.875, 0.60)]
    [InlineData("No. 8", 2.670, 1.000, 0.79)]
    [InlineData("No. 9", 3.400, 1.128, 1.00)]
    [InlineData("No. 10", 4.303, 1.270, 1.27)]
    [InlineData("No. 11", 5.313, 1.410, 1.56)]
    [InlineData("No. 14", 7.650, 1.693, 2.25)]
    [InlineData("No. 18", 13.600, 2.257, 4.00)]
    public void Numbered_bars_are_those_of_the_standard(string name, double poundsPerFoot, double inches, double squareInches)
    {
        var bar = BarSizes.Find(name)!;
        Assert.Equal((poundsPerFoot, inches, squareInches), (Math.Round(bar.MassPerMetre / PoundsPerFoot, 6), bar.Diameter.Inches, Math.Round(bar.Area / 645.16, 6)));
    }

    /// <summary>Stockholder's table to BS 4449 (checkvalues.csv Q-BARM-6, -8, -10, -12, -16, -20, -25, -32, -40, -50), kg/m; area pi d2 / 4.</summary>
    [Theory]
    [InlineData("6 mm", 0.222, 28.3)]
    [InlineData("8 mm", 0.395, 50.3)]
    [InlineData("10 mm", 0.616, 78.5)]
    [InlineData("12 mm", 0.888, 113.1)]
    [InlineData("16 mm", 1.579, 201.1)]
    [InlineData("20 mm", 2.466, 314.2)]
    [InlineData("25 mm", 3.854, 490.9)]
    [InlineData("32 mm", 6.313, 804.2)]
    [InlineData("40 mm", 9.864, 1256.6)]
    [InlineData("50 mm", 15.413, 1963.5)]
    public void Metric_bars_are_those_of_the_standard(string name, double kilogramsPerMetre, double mm2)
    {
        var bar = BarSizes.Find(name)!;
        Assert.InRange(bar.MassPerMetre, kilogramsPerMetre - 0.002, kilogramsPerMetre + 0.002);
        Assert.InRange(bar.Area, mm2 - 0.05, mm2 + 0.05);
    }

    /// <summary>ASTM F1554-18 table 2 (checkvalues.csv Q-ROD-1/2, -5/8, -3/4, -7/8, -1-1/8, Q-ROD-As-1/2, -5/8, -3/4): tensile stress area; it follows 0.7854 (d - 0.9743 / n)2 of ASME B1.1 (from memory) with n threads per inch.</summary>
    [Theory]
    [InlineData("1/2 in", 0.5, 13, 0.1419, 0.668)]
    [InlineData("5/8 in", 0.625, 11, 0.226, 1.043)]
    [InlineData("3/4 in", 0.75, 10, 0.334, 1.502)]
    [InlineData("7/8 in", 0.875, 9, 0.462, 2.044)]
    [InlineData("1 in", 1, 8, 0.606, 2.670)]
    [InlineData("1 1/8 in", 1.125, 7, 0.763, 3.379)]
    public void Rods_are_those_of_the_standard(string name, double inches, int threads, double squareInches, double poundsPerFoot)
    {
        var (plain, threaded) = (BarSizes.Find($"{name} plain rod")!, BarSizes.Find($"{name} threaded rod")!);
        var formula = 0.7854 * Math.Pow(inches - (0.9743 / threads), 2);
        Assert.Equal((inches, inches), (plain.Diameter.Inches, threaded.Diameter.Inches));
        Assert.Equal(squareInches, threaded.Area / 645.16, 9);
        Assert.InRange(threaded.Area / 645.16, formula - 0.0006, formula + 0.0006);
        Assert.Equal(poundsPerFoot, plain.MassPerMetre / PoundsPerFoot, 9);
    }

    /// <summary>Twelve No. 5 bars of 10 ft 6 in weigh 12 x 10.5 x 1.043 = 131.42 lb.</summary>
    [Fact]
    public void Bars_weigh_their_length() =>
        Assert.Equal(131.42, 12 * BarSizes.Find("No. 5")!.Mass(Length.FromInches(126)) / 0.45359237, 2);

    /// <summary>ACI 530 8.5.7 with Fs 24 ksi, as printed in a trade text: 48 db.</summary>
    [Theory]
    [InlineData("No. 3", 18)]
    [InlineData("No. 4", 24)]
    [InlineData("No. 5", 30)]
    [InlineData("No. 7", 42)]
    [InlineData("No. 8", 48)]
    public void Laps_of_the_american_set_are_48_diameters(string name, double inches) =>
        Assert.Equal(Length.FromInches(inches), BuiltInRuleSets.Get("us").Bars!.Splice.Lap(BarSizes.Find(name)!));

    /// <summary>WAC 246-359-440 (3): laps of 20 in; by length, and by table for one size of two.</summary>
    [Theory]
    [InlineData("lap = { length = \"20 in\" }", "No. 4", 20)]
    [InlineData("lap = { length = \"20 in\" }", "No. 6", 20)]
    [InlineData("lap = { table = [{ bar = \"No. 4\", lap = \"22 in\" }], least = \"12 in\" }", "No. 4", 22)]
    [InlineData("lap = { table = [{ bar = \"No. 4\", lap = \"22 in\" }], least = \"12 in\" }", "No. 5", 12)]
    public void Laps_may_be_a_length_or_a_table(string lap, string bar, double inches)
    {
        var rules = Us("lap = { diameters = 48, least = \"12 in\" }", lap);
        Assert.Equal(Length.FromInches(inches), rules.Bars!.Splice.Lap(BarSizes.Find(bar)!));
    }

    [Fact]
    public void Every_value_of_the_bar_rules_names_its_source() => Assert.All(["us", "eu", "de"], name =>
    {
        var text = SettingsReader.BuiltInText(name)!.Replace("in-use = false", "in-use = true", StringComparison.Ordinal);
        var table = text[text.IndexOf("[bars]", StringComparison.Ordinal)..text.IndexOf("[[bars.sources]]", StringComparison.Ordinal)];
        var prefix = string.Empty;
        var keys = new List<string>();
        foreach (var line in table.Split('\n'))
        {
            prefix = line.StartsWith("[bars.starter]", StringComparison.Ordinal) ? "starter." : prefix;
            var at = line.IndexOf(" = ", StringComparison.Ordinal);
            keys.AddRange(at > 0 && char.IsLetter(line[0]) ? [prefix + line[..at]] : []);
        }

        var sourced = RuleSetReader.Read(text, name).Value!.Bars!.Sources.SelectMany(source => source.Keys).ToHashSet(StringComparer.Ordinal);
        Assert.NotEmpty(keys);
        Assert.Equal([], keys.Except(["in-use", "not-for"], StringComparer.Ordinal).Except(sourced, StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.All(sourced, key => Assert.True(keys.Contains(key, StringComparer.Ordinal) || keys.Contains(key.Split('.')[0], StringComparer.Ordinal), key));
    });

    /// <summary>EN 1996-1-1:2005 8.4 (from memory): openings of more than 1.5 m2, 4 m apart, 0.02 m2: a circle of 159.6 mm.</summary>
    [Fact]
    public void Confined_masonry_is_an_option_of_the_european_sets()
    {
        Assert.Null(BuiltInRuleSets.Get("eu").Bars);
        var text = SettingsReader.BuiltInText("eu")!.Replace("in-use = false", "in-use = true", StringComparison.Ordinal);
        var bars = RuleSetReader.Read(text, "mine.toml").Value!.Bars!;
        Assert.Equal(4000, bars.LargestSpacing.Mm);
        Assert.True(bars.AsksAtOpening(Length.FromMm(1500), Length.FromMm(1000)));
        Assert.False(bars.AsksAtOpening(Length.FromMm(1500), Length.FromMm(999)));
        Assert.True(Math.PI * bars.LeastCore.Mm * bars.LeastCore.Mm / 4 >= 20_000);
        Assert.True(bars.BarsInCore * bars.Bar.Area >= 300);
    }

    private static RuleSet Us(string replace, string with) =>
        RuleSetReader.Read(SettingsReader.BuiltInText("us")!.Replace(replace, with, StringComparison.Ordinal), "mine.toml").Value!;
}
