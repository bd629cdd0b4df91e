using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>The largest unit of which every length of a block is a whole multiple; places count from the block's start.</summary>
internal readonly record struct Scale(long Origin, long Unit)
{
    public static Scale Of(Block block)
    {
        var sizes = block.Sizes;
        var origin = block.Stretches.Min(stretch => stretch.From);
        var unit = new[] { sizes.Unit, sizes.LeastPiece, sizes.JointMin, sizes.JointMax, sizes.Grid }
            .Concat(sizes.Parts)
            .Concat(block.Stretches.SelectMany(stretch => new[] { stretch.From - origin, stretch.To - origin }))
            .Aggregate(0L, Divisor);
        return new Scale(origin, unit);
    }

    public long Of(long length) => length / Unit;

    public long Place(long place) => (place - Origin) / Unit;

    public long Back(long place) => (place * Unit) + Origin;

    public long Back2(long place2) => (place2 * Unit) + (2 * Origin);

    public long Down(long length) => Floor(length);

    /// <summary>The last whole unit at or before a doubled place: doubled places that are decided are whole.</summary>
    public long Before(long place2) => Floor(place2 - (2 * Origin));

    /// <summary>The first whole unit at or after a doubled place.</summary>
    public long After(long place2) => -Floor((2 * Origin) - place2);

    /// <summary>The least number of whole units in a length.</summary>
    public long Up(long length) => -Floor(-length);

    private long Floor(long value) => value >= 0 ? value / Unit : -((-value + Unit - 1) / Unit);

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}
