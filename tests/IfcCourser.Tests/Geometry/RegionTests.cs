using CsCheck;
using IfcCourser.Geometry;

namespace IfcCourser.Tests.Geometry;

public static class RegionTests
{
    private static readonly Gen<Vector2> _corner = Gen.Select(Gen.Int[0, 40], Gen.Int[0, 40], (x, y) => new Vector2(100 * x, 100 * y));

    /// <summary>Loops of strangers' models cross themselves, go back on themselves and meet their own corners.</summary>
    [Fact]
    public static void Any_loops_make_a_region() => Gen.Select(_corner.Array[3, 12], _corner.Array[3, 12]).ForAll((first, second) =>
    {
        var (one, other) = (Region.Of([[.. first]]), Region.Of([[.. second]]));
        var both = Region.Of([[.. first], [.. second]]);
        Assert.InRange(both.Area, Math.Max(one.Area, other.Area) - 1, one.Area + other.Area + 1);
        Assert.Equal(one.Area, one.Subtract(other).Area + one.Intersect(other).Area, 5.0);
    });

    /// <summary>Two triangles of 100 mm x 100 mm / 4 that meet in the middle.</summary>
    [Fact]
    public static void A_loop_that_crosses_itself_covers_both_sides() =>
        Assert.Equal(5_000, Region.Of([[new(0, 0), new(100, 100), new(100, 0), new(0, 100)]]).Area, 1.0);
}
