using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Geometry;

namespace IfcCourser.Tests.Geometry;

public sealed class SolidTests
{
    private static readonly ImmutableArray<Vector2> _lShape = [new(0, 0), new(3000, 0), new(3000, 200), new(200, 200), new(200, 2000), new(0, 2000)];

    [Fact]
    public void An_L_shaped_prism_has_the_volume_of_its_two_legs() =>
        Assert.Equal(((3000 * 200) + (200 * 1800)) * 2500.0, Prism(_lShape, 2500).Volume, 1e-3);

    [Fact]
    public void A_hole_in_the_profile_stays_open()
    {
        var profile = Profile.Of(Rectangle(0, 0, 4000, 2500), [Rectangle(1000, 500, 2000, 1500), Rectangle(2500, 500, 3000, 1500)]);
        Assert.Equal(((4000 * 2500) - (1000 * 1000) - (500 * 1000)) * 240.0, profile.Extruded(Transform3.Identity, new Vector3(0, 0, 240)).Volume, 1e-3);
    }

    [Fact]
    public void Far_from_the_origin_nothing_is_lost()
    {
        var far = Transform3.Identity with { Origin = new Vector3(3e7, -2e7, 4e5) };
        var wall = Profile.Of(_lShape, []).Extruded(far, new Vector3(0, 0, 2500));
        Assert.Equal(2.4, wall.Volume * 1e-9, 1e-9);
        Assert.Equal(3e7 + 3000, wall.Box.Max.X, 1e-6);
    }

    [Fact]
    public void A_mirroring_map_keeps_the_volume_positive()
    {
        var mirror = new Transform3(default, new Vector3(-1, 0, 0), new Vector3(0, 1, 0), new Vector3(0, 0, 1));
        Assert.Equal(2.4, Prism(_lShape, 2500).Transformed(mirror).Volume * 1e-9, 1e-9);
    }

    [Fact]
    public void Sweeping_downwards_gives_the_same_volume_as_upwards() =>
        Assert.Equal(2.4, Profile.Of(_lShape, []).Extruded(Transform3.Identity, new Vector3(300, 0, -2500)).Volume * 1e-9, 1e-9);

    [Fact]
    public void A_window_is_cut_and_a_box_beside_the_wall_is_not()
    {
        var wall = Prism(Rectangle(0, 0, 4000, 240), 2500);
        var window = Box(1000, -100, 900, 2000, 500, 2100);
        var beside = Box(5000, 0, 0, 6000, 240, 2500);
        Assert.Equal((4000 * 2500 * 240.0) - (1000 * 1200 * 240.0), wall.Subtract(window).Subtract(beside).Volume, 1e-3);
        Assert.Equal(1000 * 1200 * 240.0, wall.Intersect(window).Volume, 1e-3);
        Assert.True(wall.Intersect(beside).IsEmpty);
    }

    [Fact]
    public void A_slope_cuts_a_gable()
    {
        var wall = Prism(Rectangle(0, 0, 4000, 200), 3000);
        var roof = Plane3.Through(new Vector3(0, 0, 1000), new Vector3(-1, 0, 2));
        Assert.Equal(4000 * 200 * 2000.0, wall.Behind(roof).Volume, 1e-3);
    }

    [Fact]
    public void Boundary_faces_in_pieces_close_although_their_edges_do_not_match()
    {
        ImmutableArray<PlanarFace> sides =
        [
            .. Prism(Rectangle(0, 0, 1000, 200), 500).Cells.Single().Faces.SelectMany(face => Halves(face, 300 + (50 * face.Plane.Normal.Y))),
        ];
        Assert.True(sides.Length > 8);
        Assert.Equal(1000 * 200 * 500.0, ClosedFaces.Enclosed(sides)!.Volume, 1e-3);
    }

    /// <summary>The tool's face leaves the wall's by less than the tolerance on one side and by more on the other.</summary>
    [Theory]
    [InlineData(-31.14, 0, 35, 6.577e-6, -0.375, 0)]
    [InlineData(0, -11.0 / 59, 6, -1.0 / 96, 0, -5.0 / 11)]
    public void Faces_that_nearly_coincide_are_counted_once(double x, double y, double z, double a, double b, double c) => CutsAddUp(x, y, z, a, b, c);

    [Fact]
    public void What_is_cut_off_and_what_is_left_make_up_the_whole()
    {
        var coordinate = Gen.Double[-500, 500];
        Gen.Select(coordinate, coordinate, coordinate, Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1]).ForAll(CutsAddUp);
    }

    private static void CutsAddUp(double x, double y, double z, double a, double b, double c)
    {
        var solid = Prism(_lShape, 600);
        var turned = new Transform3(new Vector3(x, y, z), new Vector3(1, a, b), new Vector3(-a, 1, c), new Vector3(-b, -c, 1));
        var tool = Prism(Rectangle(0, 0, 700, 300), 400).Transformed(turned);
        var parts = solid.Subtract(tool).Volume + solid.Intersect(tool).Volume;
        Assert.Equal(1, parts / solid.Volume, 1e-5);
    }

    private static IEnumerable<PlanarFace> Halves(PlanarFace face, double at)
    {
        var (behind, before) = face.Split(new Plane3(new Vector3(1, 0, 0), at));
        return new[] { behind, before }.OfType<PlanarFace>();
    }

    private static Solid Box(double x0, double y0, double z0, double x1, double y1, double z1) =>
        new([ConvexCell.Of(new Box3(new Vector3(x0, y0, z0), new Vector3(x1, y1, z1)))]);

    private static Solid Prism(ImmutableArray<Vector2> loop, double height) =>
        Profile.Of(loop, []).Extruded(Transform3.Identity, new Vector3(0, 0, height));

    private static ImmutableArray<Vector2> Rectangle(double x0, double y0, double x1, double y1) => [new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1)];
}
