using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Support;

/// <summary>Generated walls, boxes and rules; piers as mean as they come.</summary>
internal static class WallGen
{
    private static readonly (string Catalog, string Rules)[] _sets =
        [("aac-in", "us"), ("aac-mm", "eu"), ("aac-mm", "de"), ("aac-600", "eu"), ("octametric", "de"), ("block-in", "us"), ("aac-mm", "none")];

    public static readonly Gen<LayoutRules> Rules = Gen.Select(Gen.Int[0, _sets.Length - 1], Gen.Int[0, 2]).Select((set, policy) =>
        LayoutRules.For(BuiltInRuleSets.Get(_sets[set].Rules), BuiltInCatalogs.Get(_sets[set].Catalog), (OpeningPolicy)policy));

    private static readonly Gen<(int Pier, int Width, int Sill, int Height)[]> _openings =
        Gen.Select(Gen.Int[40, 2500], Gen.Int[250, 3000], Gen.Int[0, 1200], Gen.Int[300, 2100]).Array[0, 4];

    private static readonly Gen<Length> _length = Gen.Long[900_000_000, 9_000_000_000].Select(n => new Length(n - (n % 1000)));

    private static readonly Gen<Length> _height = Gen.Int[700, 3400].Select(mm => Length.FromMm(mm));

    public static readonly Gen<(WallModel Model, LayoutRules Rules)> AloneOrBox = Gen
        .Select(Rules, Gen.Select(_length, _length, _height, Gen.Int[0, 20]), Gen.Bool, Gen.Bool, _openings)
        .Select((rules, size, isBox, isGable, openings) =>
        {
            var (a, b, height, width) = size;
            var thickness = rules.Catalog.Widths[width % rules.Catalog.Widths.Length].Actual;
            var least = Length.FromMm(1500);
            var model = isBox
                ? WallSketch.Box(a + least, b + least, height, thickness)
                : WallSketch.Alone(WallSketch.Straight(a, height, thickness));
            return (model with { Walls = [.. model.Walls.Select((wall, i) => With(wall, i == 1 || isGable, height, openings))] }, rules);
        });

    /// <summary>Short walls, alone or as a small box, every second one with an opening: quick to bond, for what is reckoned from finished walls.</summary>
    public static readonly Gen<(WallModel Model, LayoutRules Rules)> Short = Gen
        .Select(Rules, Gen.Select(Gen.Int[1200, 4200], Gen.Int[800, 2000]), Gen.Int[0, 20], Gen.Int[250, 3600], Gen.Int[0, 5])
        .Select((rules, size, width, left, kind) =>
        {
            var (length, height, thickness) = (Length.FromMm(size.Item1), Length.FromMm(size.Item2), rules.Catalog.Widths[width % rules.Catalog.Widths.Length].Actual);
            return (
                kind == 0
                    ? WallSketch.Box(length + Length.FromMm(800), length + Length.FromMm(500), Length.FromMm(1000), thickness)
                    : WallSketch.Alone(WallSketch.Straight(length, height, thickness, left % 2 == 0 && left + 900 < size.Item1 ? [(left, left + 800, 400, size.Item2 - 300)] : [])),
                rules);
        });

    /// <summary>Long walls, some stepped at the top, some that the model calls non-bearing, some with places given for joints.</summary>
    public static readonly Gen<(WallModel Model, LayoutRules Rules)> Long = Gen
        .Select(Rules, Gen.Select(Gen.Long[5_000_000_000, 24_000_000_000], _height, Gen.Int[0, 20]), Gen.Int[0, 3], Gen.Int[0, 100], _openings)
        .Select((rules, size, kind, share, openings) =>
        {
            var (length, height, width) = (new Length(size.Item1 - (size.Item1 % 1000)), size.Item2, size.Item3);
            var wall = With(WallSketch.Straight(length, height, rules.Catalog.Widths[width % rules.Catalog.Widths.Length].Actual), isGable: false, height, openings);
            var place = length * share / 100;
            return (WallSketch.Alone(wall with
            {
                LoadBearing = share % 2 == 0 ? null : false,
                MovementJoints = kind is 1 or 2 ? [place] : [],
                Outline = kind is 2 or 3 && place > Length.Zero && place < length ? Stepped(length, place, height) : wall.Outline,
            }), rules);
        });

    /// <summary>A wall against another one, of unlike heights and thicknesses, where the rules ask for bonded tees.</summary>
    public static readonly Gen<(WallModel Model, LayoutRules Rules)> BondedTees = Gen
        .Select(Rules, Gen.Select(_length, _length, _height, _height), Gen.Select(Gen.Int[0, 20], Gen.Int[0, 20]), Gen.Int[0, 100], _openings)
        .Select((rules, size, widths, share, openings) =>
        {
            var catalog = rules.Catalog.Widths;
            var (hostThickness, thickness) = (catalog[widths.Item1 % catalog.Length].Actual, catalog[widths.Item2 % catalog.Length].Actual);
            var (host, abutting) = (WallSketch.Straight(size.Item1 + thickness, size.Item3, hostThickness), WallSketch.Straight(size.Item2, size.Item4, thickness));
            return (
                WallSketch.Tee(share % 4 == 0 ? With(host, isGable: false, size.Item3, openings) : host, abutting, size.Item1 * share / 100),
                rules with { Set = rules.Set with { Tees = TeeBuild.Bonded } });
        });

    private static ImmutableArray<ElevationPoint> Stepped(Length length, Length at, Length height) =>
    [
        new(Length.Zero, Length.Zero), new(length, Length.Zero), new(length, height), new(at, height), new(at, height + Length.FromMm(800)), new(Length.Zero, height + Length.FromMm(800)),
    ];

    private static Wall With(Wall wall, bool isGable, Length height, (int Pier, int Width, int Sill, int Height)[] openings)
    {
        var placed = new List<WallOpening>();
        var at = Length.Zero;
        foreach (var (pier, width, sill, tall) in openings)
        {
            var left = at + Length.FromMm(pier);
            at = left + Length.FromMm(width);
            var bottom = sill < 300 ? 0 : sill;
            var top = Math.Min(bottom + tall, height.Mm);
            if (at < wall.Frame.Length && top - bottom >= 250)
            {
                placed.Add(WallSketch.Opening(placed.Count, left.Mm, at.Mm, bottom, top));
            }
        }

        var length = wall.Frame.Length;
        return wall with
        {
            Openings = [.. placed],
            Outline = isGable
                ? [new(Length.Zero, Length.Zero), new(length, Length.Zero), new(length, height), new(length / 2, height + (length / 3)), new(Length.Zero, height)]
                : wall.Outline,
        };
    }
}
