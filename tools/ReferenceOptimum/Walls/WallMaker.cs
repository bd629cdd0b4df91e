using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace ReferenceOptimum.Walls;

/// <summary>Walls made up from a number: up to 6 m long and 12 courses high, alone or as a box, with up to three openings.</summary>
internal static class WallMaker
{
    private static readonly (string Catalog, string Rules)[] _sets =
        [("aac-in", "us"), ("aac-mm", "eu"), ("aac-600", "eu"), ("octametric", "de"), ("block-in", "us"), ("aac-mm", "de")];

    /// <param name="seed">Of the whole series.</param>
    /// <param name="number">Of the wall in the series; it says catalog and rules too.</param>
    public static (string Name, WallModel Model, LayoutRules Rules) Make(int seed, int number)
    {
#pragma warning disable CA5394 // Do not use insecure randomness: the walls shall be the same each time.
        var random = new Random((seed * 100_003) + number);
        var (catalogName, rulesName) = _sets[number % _sets.Length];
        var catalog = BuiltInCatalogs.Get(catalogName);
        var policy = (OpeningPolicy)random.Next(3);
        var rules = LayoutRules.For(BuiltInRuleSets.Get(rulesName), catalog, policy);
        var module = catalog.Module;
        Length Size(int least, int most) => random.Next(2) == 0
            ? Length.FromMm(random.Next(least, most))
            : Length.FromMm(random.Next(least, most)).FloorTo(module);

        var length = Length.Max(Size(900, 6001), Length.FromMm(800));
        var courses = random.Next(3, 13);
        var height = (courses * catalog.CoursePitch) - catalog.BedJoint.Nominal + catalog.LevellingBed.Nominal
            + (random.Next(4) == 0 ? Length.FromMm(random.Next(0, 200)) : Length.Zero);
        var thickness = catalog.Widths[random.Next(catalog.Widths.Length)].Actual;
        var openings = ImmutableArray.CreateBuilder<(double, double, double, double)>();
        var at = 0.0;
        for (var i = random.Next(4); i > 0; i--)
        {
            var left = at + Size(100, 2000).Mm;
            var right = left + Size(300, 2200).Mm;
            var bottom = random.Next(3) == 0 ? 0 : random.Next(1, 6) * catalog.CoursePitch.Mm;
            bottom += bottom > 0 && random.Next(3) == 0 ? random.Next(0, 120) : 0;
            var top = Math.Min(bottom + random.Next(300, 2200), height.Mm - (random.Next(3) == 0 ? 0 : catalog.CoursePitch.Mm));
            if (right < length.Mm && top - bottom > 250)
            {
                openings.Add((left, right, bottom, top));
                at = right;
            }
        }

        var isBox = random.Next(4) == 0;
        var other = Length.Max(Size(1500, 6001), Length.FromMm(1500));
        var wall = WallSketch.Straight(length, height, thickness, [.. openings]);
        var model = WallSketch.Alone(wall);
        if (isBox && length > Length.FromMm(1500))
        {
            model = WallSketch.Box(length, other, height, thickness);
            model = model with { Walls = model.Walls.SetItem(0, model.Walls[0] with { Openings = wall.Openings }) };
        }
#pragma warning restore CA5394

        return (FormattableString.Invariant($"{number:000} {policy}"), model, rules);
    }
}
