using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace ReferenceOptimum.Bars;

/// <summary>Walls with bars, made up from a number: up to 9 m long, alone, with another that abuts, or as a box; some with a step at the top, with movement joints, close or wide spacing.</summary>
internal static class BarWallMaker
{
    private static readonly (string Catalog, string Rules)[] _sets = [("aac-in", "us"), ("aac-mm", "eu"), ("block-in", "us"), ("aac-in", "eu"), ("aac-mm", "us")];

    /// <param name="seed">Of the whole series.</param>
    /// <param name="number">Of the wall in the series; it says catalog and rules too.</param>
    public static (string Name, WallModel Model, LayoutRules Rules) Make(int seed, int number)
    {
#pragma warning disable CA5394 // Do not use insecure randomness: the walls shall be the same each time.
        var random = new Random((seed * 100_003) + number);
        var (catalogName, rulesName) = _sets[number % _sets.Length];
        var catalog = BuiltInCatalogs.Get(catalogName);
        var policy = (OpeningPolicy)random.Next(3);
        var rules = LayoutRules.For(Set(rulesName, random), catalog, policy);
        Length Size(int least, int most) => random.Next(2) == 0 ? Length.FromMm(random.Next(least, most)) : Length.FromMm(random.Next(least, most)).FloorTo(catalog.Module);

        var length = Length.Max(Size(900, 9001), Length.FromMm(800));
        var courses = random.Next(4, 13);
        var height = (courses * catalog.CoursePitch) - catalog.BedJoint.Nominal + catalog.LevellingBed.Nominal;
        var widths = catalog.Widths.Where(width => catalog.Cores.Any(core => core.LeastWall <= width.Nominal)).ToList();
        var thickness = widths[random.Next(widths.Count)].Actual;
        var openings = Openings(random, length, height, catalog.CoursePitch, Size);
        var wall = WallSketch.Straight(length, height, thickness, openings);
        if (random.Next(5) == 0 && courses > 6)
        {
            var (step, low) = (length * random.Next(30, 71) / 100, height - (2 * catalog.CoursePitch));
            wall = WallSketch.Straight(length, height, thickness, [.. openings.Where(opening => opening.Top <= low.Mm)]);
            wall = wall with
            {
                Outline = [new(Length.Zero, Length.Zero), new(length, Length.Zero), new(length, low), new(step, low), new(step, height), new(Length.Zero, height)],
            };
        }

        var model = (random.Next(5), length > Length.FromMm(2500)) switch
        {
            (0, true) => Box(wall, Length.Max(Size(1500, 5001), Length.FromMm(1500)), height),
            (1, true) when wall.Outline.Length == 4 && openings.Length == 0 =>
                WallSketch.Tee(wall, WallSketch.Straight(Size(1500, 3001), height, thickness), (length * random.Next(20, 71) / 100).FloorTo(Length.FromMm(1))),
            _ => WallSketch.Alone(wall),
        };
#pragma warning restore CA5394
        return (FormattableString.Invariant($"{number:000} {policy}"), model, rules);
    }

    private static WallModel Box(Wall wall, Length other, Length height)
    {
        var model = WallSketch.Box(wall.Frame.Length, other, height, wall.Frame.Thickness);
        return model with { Walls = model.Walls.SetItem(0, model.Walls[0] with { Openings = wall.Openings }) };
    }

    /// <summary>A built-in set whose bars are in use, its spacing and least openings varied; confining elements may take the catalog's cores.</summary>
    private static RuleSet Set(string name, Random random)
    {
#pragma warning disable CA5394 // Do not use insecure randomness: the walls shall be the same each time.
        var text = SettingsReader.BuiltInText(name)!.Replace("in-use = false", "in-use = true", StringComparison.Ordinal);
        var set = RuleSetReader.Read(text, name).Value;
        double[] spacings = [24, 32, 48, 72, 120];
        return set! with
        {
            Bars = set.Bars! with
            {
                LargestSpacing = Length.FromInches(spacings[random.Next(spacings.Length)]),
                SpacingFromHeight = Length.FromMm(400 * random.Next(0, 4)),
                OpeningsFrom = Length.FromMm(400 * random.Next(0, 3)),
                OpeningsFromCm2 = 0,
                LeastCore = Length.Zero,
                FromTee = random.Next(2) == 0 ? Length.FromMm(150) : null,
            },
        };
#pragma warning restore CA5394
    }

    private static (double Left, double Right, double Bottom, double Top)[] Openings(Random random, Length length, Length height, Length pitch, Func<int, int, Length> size)
    {
#pragma warning disable CA5394 // Do not use insecure randomness: the walls shall be the same each time.
        var openings = ImmutableArray.CreateBuilder<(double Left, double Right, double Bottom, double Top)>();
        var at = 0.0;
        for (var i = random.Next(5); i > 0; i--)
        {
            var left = at + size(100, 2500).Mm;
            var right = left + size(250, 2200).Mm;
            var bottom = random.Next(3) == 0 ? 0 : random.Next(1, 6) * pitch.Mm;
            var top = Math.Min(bottom + random.Next(300, 2200), height.Mm - (random.Next(3) == 0 ? 0 : pitch.Mm));
            if (right < length.Mm && top - bottom > 250)
            {
                openings.Add((left, right, bottom, top));
                at = right;
            }
        }
#pragma warning restore CA5394

        return [.. openings];
    }
}
