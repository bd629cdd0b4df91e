using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace ReferenceOptimum.Walls;

/// <summary>Walls made up from a number: up to 6 m long and 12 courses high, alone or as a box, with up to three openings; gables where they are asked for.</summary>
internal static class WallMaker
{
    private static readonly (string Catalog, string Rules)[] _sets =
        [("aac-in", "us"), ("aac-mm", "eu"), ("aac-600", "eu"), ("octametric", "de"), ("block-in", "us"), ("aac-mm", "de")];

    /// <param name="seed">Of the whole series.</param>
    /// <param name="number">Of the wall in the series; it says catalog and rules too.</param>
    /// <param name="isGable">Whether the wall stands alone and its top slopes.</param>
    public static (string Name, WallModel Model, LayoutRules Rules) Make(int seed, int number, bool isGable = false)
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
        if (isGable)
        {
            model = WallSketch.Alone(Gable(wall, height, random.Next(8), random.Next(5)));
        }
        else if (isBox && length > Length.FromMm(1500))
        {
            model = WallSketch.Box(length, other, height, thickness);
            model = model with { Walls = model.Walls.SetItem(0, model.Walls[0] with { Openings = wall.Openings }) };
        }
#pragma warning restore CA5394

        return (FormattableString.Invariant($"{number:000}{(isGable ? "g" : "")} {policy}"), model, rules);
    }

    /// <summary>The wall under slopes: openings that would reach over them are left out.</summary>
    /// <param name="wall">The wall with an even top.</param>
    /// <param name="height">Its height.</param>
    /// <param name="eaves">Eighths of the height that are left at its ends.</param>
    /// <param name="apex">Quarters of its length to where it is highest: a single slope at 0 and 4.</param>
    private static Wall Gable(Wall wall, Length height, int eaves, int apex)
    {
        var (length, low, middle) = (wall.Frame.Length, height * eaves / 8, wall.Frame.Length * apex / 4);
        ElevationPoint[] points =
        [
            new(Length.Zero, Length.Zero), new(length, Length.Zero), new(length, apex == 4 ? height : low),
            new(middle, height), new(Length.Zero, apex == 0 ? height : low),
        ];
        return wall with
        {
            Outline = [.. points.Distinct()],
            Openings = [.. wall.Openings.Where(opening => opening.Model.Top.Mm < Math.Min(Top(opening.Model.Left.Mm), Top(opening.Model.Right.Mm)))],
        };

        double Top(double s) => height.Mm - ((height - low).Mm * (s < middle.Mm ? (middle.Mm - s) / middle.Mm : s > middle.Mm ? (s - middle.Mm) / (length - middle).Mm : 0));
    }
}
