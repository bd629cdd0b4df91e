using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Tests.Geometry;

public sealed class LoopArcTests
{
    /// <summary>A quarter ring of radii 800 and 1000 about (50, 60) in chords of five degrees.</summary>
    [Fact]
    public void A_ring_has_an_outer_arc_to_the_left_and_an_inner_one_to_the_right()
    {
        static Vector2 At(double radius, int degrees) => new(50 + (radius * Math.Cos(degrees * Math.PI / 180)), 60 + (radius * Math.Sin(degrees * Math.PI / 180)));
        ImmutableArray<Vector2> loop = [.. Enumerable.Range(0, 19).Select(i => At(1000, i * 5)), .. Enumerable.Range(0, 19).Select(i => At(800, 90 - (i * 5)))];
        var arcs = LoopArc.In(loop).OrderByDescending(arc => arc.Radius).ToList();
        Assert.Equal(2, arcs.Count);
        Assert.All(arcs, arc => Assert.True((arc.Centre - new Vector2(50, 60)).Length < 1e-6));
        Assert.Equal([1000, 800], arcs.Select(arc => Math.Round(arc.Radius, 6)));
        Assert.Equal([Math.PI / 2, -Math.PI / 2], arcs.Select(arc => arc.Turn), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.All(arcs, arc => Assert.Equal(19, arc.Corners.Length));
    }

    [Fact]
    public void Rectangles_and_octagons_have_none()
    {
        var octagon = Enumerable.Range(0, 8).Select(i => i * Math.PI / 4).Select(angle => new Vector2(1000 * Math.Cos(angle), 1000 * Math.Sin(angle))).ToImmutableArray();
        Assert.Empty(LoopArc.In(octagon));
        Assert.Empty(LoopArc.In([new(0, 0), new(4000, 0), new(4000, 240), new(0, 240)]));
    }
}
