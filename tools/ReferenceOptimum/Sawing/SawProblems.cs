using System.Collections.Immutable;
using IfcCourser.Catalogs;

namespace ReferenceOptimum.Sawing;

/// <summary>Lists of pieces made up from a number: few lengths or many, short or long, some of them ripped.</summary>
internal static class SawProblems
{
    private static readonly string[] _catalogs = ["aac-mm", "aac-in", "aac-600", "octametric", "block-in"];

    /// <param name="seed">Of the whole series.</param>
    /// <param name="number">Of the list in the series; it says the catalog too.</param>
    public static SawProblem Make(int seed, int number)
    {
#pragma warning disable CA5394 // Do not use insecure randomness: the lists shall be the same each time.
        var random = new Random((seed * 100_003) + number);
        var catalog = BuiltInCatalogs.Get(_catalogs[number % _catalogs.Length]);
        var (unit, high, grid) = (catalog.UnitLength.Nanometres, catalog.UnitHeight.Nanometres, catalog.CutGrid.Nanometres);
        var least = (long)(unit * (random.Next(3) == 0 ? 0.3 : 0.16));
        var most = (long)(unit * (random.Next(3) == 0 ? 0.6 : 0.97));
        long Length() => (least + random.NextInt64(most - least)) / grid * grid;
        var lengths = Enumerable.Range(0, random.Next(2, 26)).Select(_ => Length()).ToArray();

        // What a lower unit of the catalog holds is sawn from that, so not from this one.
        var low = catalog.OtherHeights.Where(other => other < catalog.UnitHeight).Select(other => other.Nanometres).Append((long)(high * 0.3)).Max() + grid;
        var heights = Enumerable.Range(0, random.Next(1, 4)).Select(i => i == 0 ? high : (low + (long)((high - low) * 0.9 * random.NextDouble())) / grid * grid).ToArray();
        var pieces = Enumerable.Range(0, random.Next(4, 61)).Select(_ =>
        {
            var height = heights[random.Next(2) == 0 ? 0 : random.Next(heights.Length)];
            return (height < high && random.Next(3) == 0 ? unit : lengths[random.Next(lengths.Length)], height);
        }).ToImmutableArray();
#pragma warning restore CA5394
        return new SawProblem($"list {number} of {seed}", catalog.Name, unit, high, catalog.Kerf.Nanometres, pieces);
    }
}
