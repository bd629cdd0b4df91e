using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

/// <summary>A table as a user writes it, and what must come out of it; worked by hand.</summary>
public sealed class LintelChoiceTests
{
    private static readonly ImmutableArray<LintelProduct> _table =
    [
        Lintel("short, narrow walls", 1200, 1, [115, 175]),
        Lintel("short", 1200, 1, []),
        Lintel("short, heavy", 1000, 3, []),
        Lintel("long", 2500, 1, [240]),
        Lintel("long, heavy", 2000, 2, []),
    ];

    [Theory]
    [InlineData(1000, 175, 1, "short, narrow walls", "short", "short, heavy", "long, heavy")]
    [InlineData(1000, 240, 1, "short", "short, heavy", "long", "long, heavy")]
    [InlineData(1001, 240, 1, "short", "long", "long, heavy")]
    [InlineData(1200, 240, 2, "long, heavy")]
    [InlineData(1000, 240, 3, "short, heavy")]
    [InlineData(2500, 240, 1, "long")]
    [InlineData(2500, 300, 1)]
    [InlineData(1001, 240, 3)]
    public void Span_width_and_load_class_choose(double clear, double thickness, int loadClass, params string[] names)
    {
        var rules = LayoutRules.For(
            BuiltInRuleSets.Get("eu") with { LintelLoadClass = loadClass }, BuiltInCatalogs.Get("aac-mm") with { Lintels = _table }, OpeningPolicy.Move);
        Assert.Equal(names, LintelChoice.Serving(Length.FromMm(clear), Length.FromMm(thickness), rules).Select(lintel => lintel.Name), StringComparer.Ordinal);
    }

    /// <summary>In inch catalogs a table may name 8 in walls by what they are called or by what they measure.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(7.875)]
    public void A_width_is_known_by_its_nominal_and_its_actual_size(double named)
    {
        var lintel = Lintel("eight", 1200, 1, []) with { Widths = [Length.FromInches(named)] };
        var rules = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in") with { Lintels = [lintel] }, OpeningPolicy.Move);
        Assert.Single(LintelChoice.Serving(Length.FromInches(40), Length.FromInches(7.875), rules));
        Assert.Empty(LintelChoice.Serving(Length.FromInches(40), Length.FromInches(9.875), rules));
    }

    /// <summary>The longer of the lintel's own (or the catalog's) and the rule set's bearing counts; DIN 1053-1 (withdrawn): 115 mm.</summary>
    [Theory]
    [InlineData(null, 200)]
    [InlineData(250d, 250)]
    [InlineData(100d, 115)]
    public void The_bearing_is_the_lintels_own_but_no_less_than_the_rules_ask_for(double? own, double bearing)
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("de"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);
        var lintel = _table[0] with { Bearing = own is { } mm ? Length.FromMm(mm) : null };
        Assert.Equal(bearing, LintelChoice.BearingOf(lintel, rules).Mm);
    }

    /// <summary>Every built-in list is an example, says so in each name, and has rows for two classes.</summary>
    [Fact]
    public void Built_in_lintels_say_that_they_are_examples() => Assert.All(BuiltInCatalogs.Names.Select(BuiltInCatalogs.Get), catalog =>
    {
        Assert.All(catalog.Lintels, lintel => Assert.StartsWith("Example ", lintel.Name, StringComparison.Ordinal));
        Assert.Equal([1, 2], catalog.Lintels.Select(lintel => lintel.LoadClass).Distinct().Order());
    });

    private static LintelProduct Lintel(string name, double span, int loadClass, ImmutableArray<double> widths) => new()
    {
        Name = name,
        Kind = LintelKind.Solid,
        MaxClearSpan = Length.FromMm(span),
        Height = Length.FromMm(249),
        Widths = [.. widths.Select(width => Length.FromMm(width))],
        LoadClass = loadClass,
        Bearing = null,
        Lengths = [],
    };
}
