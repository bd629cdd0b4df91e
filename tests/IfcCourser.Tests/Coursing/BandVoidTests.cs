using IfcCourser.Coursing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Tests.Coursing;

/// <summary>A course of 0 to 200, strips from 20 and slits up to 2, mm.</summary>
public sealed class BandVoidTests
{
    /// <summary>
    /// The outline lacks 0 to 100 up to 180, and an opening from 0 to 1700 has its sill at 184: nothing is left over the notch,
    /// and 184 under the sill beside it.
    /// </summary>
    [Fact]
    public void Masonry_under_a_sill_stays_beside_a_notch_under_the_same_opening()
    {
        var voids = Of((Rect(0, 100, 0, 180), EdgeKind.Free), (Rect(0, 1700, 184, 2000), EdgeKind.Jamb));
        Assert.Equal([new Interval(Mm(0), Mm(100)), new Interval(Mm(100), Mm(1700))], voids.Select(v => v.Run));
        Assert.Empty(voids[0].Strips);
        Assert.Equal([new Interval(Mm(0), Mm(184))], voids[1].Strips);
    }

    /// <summary>Another wall takes 0 to 241 from 120 up: a lower piece stays under it, and what stands beside stands against that wall.</summary>
    [Fact]
    public void A_wall_that_takes_the_upper_part_leaves_a_lower_piece()
    {
        var taken = Assert.Single(Of((Rect(-1, 241, 120, 200), EdgeKind.Wall)));
        Assert.Equal((EdgeKind.Wall, EdgeKind.Wall), (taken.Left, taken.Right));
        Assert.Equal([new Interval(Mm(0), Mm(120))], taken.Strips);
    }

    /// <summary>The outline lacks 0 to 200 from 100 up, another wall takes -1 to 201 under that: all is taken, and the joint beside it stays.</summary>
    [Fact]
    public void The_joint_against_a_wall_is_kept_under_a_notch()
    {
        var voids = Of((Rect(0, 200, 100, 200), EdgeKind.Free), (Rect(-1, 201, 0, 100), EdgeKind.Wall));
        Assert.Equal((Mm(201), EdgeKind.Wall), (voids[^1].Run.To, voids[^1].Right));
        Assert.All(voids, v => Assert.Empty(v.Strips));
    }

    private static System.Collections.Immutable.ImmutableArray<BandVoid> Of(params (ElevationRect, EdgeKind)[] rects) =>
        BandVoid.Of(new Interval(Mm(0), Mm(200)), rects, Mm(20), Mm(2));

    private static ElevationRect Rect(double left, double right, double bottom, double top) => new(Mm(left), Mm(right), Mm(bottom), Mm(top));

    private static Length Mm(double mm) => Length.FromMm(mm);
}
