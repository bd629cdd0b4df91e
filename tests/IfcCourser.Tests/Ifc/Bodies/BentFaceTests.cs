using IfcCourser.Geometry;
using IfcCourser.Tests.Walls;

namespace IfcCourser.Tests.Ifc.Bodies;

/// <summary>Advanced breps: plane faces with curved edges, and faces swept by a straight line.</summary>
public sealed class BentFaceTests
{
    /// <summary>A quarter ring of radii 1000 and 1240, 2500 high; its bent faces as cylinders or as extruded arcs.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_quarter_ring_with_two_bent_faces(bool extrudedArcs)
    {
        var brep = new BrepText(new ModelText());
        var solid = brep.Read(QuarterRing(brep, radius => extrudedArcs ? brep.ExtrudedArc(radius) : brep.Cylinder(radius)), out var unread);
        Assert.Empty(unread);
        Assert.Equal(1, solid.Volume / (Chords.QuarterRing * 2500), 1e-6);
        Assert.Equal((0, 1240, 2500), (Math.Round(solid.Box.Min.X, 3), Math.Round(solid.Box.Max.Y, 3), Math.Round(solid.Box.Max.Z, 3)));
    }

    /// <summary>A round column of radius 500: its side is one face around, closed by a seam or by its two circles.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_face_may_go_all_the_way_round(bool seam)
    {
        var brep = new BrepText(new ModelText());
        var (foot, head) = (brep.Vertex(500, 0, 0), brep.Vertex(500, 0, 2000));
        var (low, high) = (brep.Arc(500, 0, foot, foot), brep.Arc(500, 2000, head, head));
        var side = seam
            ? brep.Face(brep.Cylinder(500), brep.Loop((low, true), (brep.Line(foot, head), true), (high, false), (brep.Line(foot, head), false)))
            : brep.Face(brep.Cylinder(500), brep.Loop((low, true)), brep.Loop((high, false)));
        int[] faces = [side, brep.Face(brep.Flat(), brep.Loop((low, false))), brep.Face(brep.Flat(), brep.Loop((high, true)))];
        Assert.Equal(1, brep.Read(faces, out _).Volume / (Chords.Disc(500) * 2000), 1e-6);
    }

    /// <summary>A window of half the ring by 1200 mm is cut through a quarter ring's two bent faces.</summary>
    [Fact]
    public void A_bent_face_may_have_a_hole()
    {
        var brep = new BrepText(new ModelText());
        (double A, double B, double Foot, double Head) = (22.5, 67.5, 900, 2100);
        var corners = new[] { 1000.0, 1240.0 }.ToDictionary(radius => radius, radius => new[] { brep.At(radius, A, Foot), brep.At(radius, B, Foot), brep.At(radius, B, Head), brep.At(radius, A, Head) });
        var rims = corners.ToDictionary(side => side.Key, side => new[]
        {
            brep.Arc(side.Key, Foot, side.Value[0], side.Value[1]), brep.Line(side.Value[1], side.Value[2]),
            brep.Arc(side.Key, Head, side.Value[3], side.Value[2]), brep.Line(side.Value[3], side.Value[0]),
        });
        bool[] along = [true, true, false, true];
        int Hole(double radius, bool clockwise)
        {
            var edges = Enumerable.Range(0, 4).Select(i => (Edge: rims[radius][i], Along: along[i]));
            return brep.Loop([.. clockwise ? edges.Reverse().Select(edge => (edge.Edge, !edge.Along)) : edges]);
        }

        var through = Enumerable.Range(0, 4).Select(i => brep.Line(corners[1000][i], corners[1240][i])).ToArray();
        var faces = QuarterRing(brep, brep.Cylinder, Hole(1240, clockwise: true), Hole(1000, clockwise: false)).ToList();
        // Looking out of the window's middle: sill up, left and right jamb, head down.
        for (var i = 0; i < 4; i++)
        {
            var next = (i + 1) % 4;
            faces.Add(brep.Face(brep.Flat(), brep.Loop((rims[1240][i], along[i]), (through[next], false), (rims[1000][i], !along[i]), (through[i], true))));
        }

        Assert.Equal(1, brep.Read([.. faces], out _).Volume / (Chords.QuarterRing * (2500 - (1200 / 2))), 1e-6);
    }

    [Fact]
    public void Splines_of_the_second_degree_are_exact_circles()
    {
        var root = Math.Sqrt(0.5);
        var quarter = new SplineCurve(2, [new(1000, 0, 0), new(1000, 1000, 0), new(0, 1000, 0)], [1, root, 1], [0, 0, 0, 1, 1, 1]);
        var chain = quarter.Chain();
        Assert.Equal((new Vector3(1000, 0, 0), new Vector3(0, 1000, 0)), (chain[0], chain[^1]));
        Assert.All(chain, point => Assert.Equal(1000, point.Length, 1e-9));
    }

    [Fact]
    public void A_body_with_a_sphere_s_face_is_not_followed()
    {
        var text = new ModelText();
        var brep = new BrepText(text);
        var sphere = text.Add($"IFCSPHERICALSURFACE(#{text.Axes(0, 0, 0)},1240.)");
        brep.Read(QuarterRing(brep, radius => radius > 1100 ? sphere : brep.Cylinder(radius)), out var unread);
        Assert.True(Assert.Single(unread).HasBentFaces);
    }

    private static int[] QuarterRing(BrepText brep, Func<double, int> bent, int? outerHole = null, int? innerHole = null)
    {
        int P(double radius, double angle, double z) => brep.At(radius, angle, z);
        var (a0, b0, c0, d0) = (P(1000, 0, 0), P(1240, 0, 0), P(1240, 90, 0), P(1000, 90, 0));
        var (a1, b1, c1, d1) = (P(1000, 0, 2500), P(1240, 0, 2500), P(1240, 90, 2500), P(1000, 90, 2500));
        var (ab0, cd0, ab1, cd1) = (brep.Line(a0, b0), brep.Line(c0, d0), brep.Line(a1, b1), brep.Line(c1, d1));
        var (bc0, ad0, bc1, ad1) = (brep.Arc(1240, 0, b0, c0), brep.Arc(1000, 0, a0, d0), brep.Arc(1240, 2500, b1, c1), brep.Arc(1000, 2500, a1, d1));
        var (a, b, c, d) = (brep.Line(a0, a1), brep.Line(b0, b1), brep.Line(c0, c1), brep.Line(d0, d1));
        int Bent(double radius, int loop, int? hole) => hole is { } inner ? brep.Face(bent(radius), loop, inner) : brep.Face(bent(radius), loop);
        return
        [
            brep.Face(brep.Flat(), brep.Loop((ad0, true), (cd0, false), (bc0, false), (ab0, false))),
            brep.Face(brep.Flat(), brep.Loop((ab1, true), (bc1, true), (cd1, true), (ad1, false))),
            brep.Face(brep.Flat(), brep.Loop((ab0, true), (b, true), (ab1, false), (a, false))),
            brep.Face(brep.Flat(), brep.Loop((cd0, true), (d, true), (cd1, false), (c, false))),
            Bent(1240, brep.Loop((bc0, true), (c, true), (bc1, false), (b, false)), outerHole),
            Bent(1000, brep.Loop((ad0, false), (a, true), (ad1, true), (d, false)), innerHole),
        ];
    }
}
