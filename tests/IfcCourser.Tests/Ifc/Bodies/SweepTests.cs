using IfcCourser.Geometry;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Tests.Walls;

namespace IfcCourser.Tests.Ifc.Bodies;

/// <summary>Sweeps other than straight extrusions; volumes worked out by hand.</summary>
public sealed class SweepTests
{
    [Fact]
    public void Between_two_profiles_a_wall_gets_thinner()
    {
        var text = new ModelText();
        var (foot, head) = (text.Add("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,4000.,400.)"), text.Add("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,4000.,200.)"));
        var solid = Read(text, text.Add($"IFCEXTRUDEDAREASOLIDTAPERED(#{foot},#{text.Axes(0, 0, 0)},#{text.Direction(0, 0, 1)},2500.,#{head})"));
        Assert.Equal(4000 * 300 * 2500.0, solid.Volume, 1e-2);
    }

    /// <summary>A quarter ring of radii 1000 and 1240, 2500 high; both turn in the chords of the outer one.</summary>
    [Theory]
    [InlineData(1.5707963267948966)]
    [InlineData(-1.5707963267948966)]
    public void Around_an_axis_a_rectangle_makes_a_curved_wall(double angle)
    {
        var text = new ModelText();
        // The profile stands upright: its y is the model's z, it turns about its own y axis.
        var rectangle = text.Add($"IFCRECTANGLEPROFILEDEF(.AREA.,$,#{text.Add($"IFCAXIS2PLACEMENT2D(#{text.Point(1120, 1250)},$)")},240.,2500.)");
        var axis = text.Add($"IFCAXIS1PLACEMENT(#{text.Point(0, 0, 0)},#{text.Direction(0, 1, 0)})");
        var angleText = FormattableString.Invariant($"{angle:R}");
        var solid = Read(text, text.Add($"IFCREVOLVEDAREASOLID(#{rectangle},#{text.Axes(0, 0, 0, [1, 0, 0], [0, -1, 0])},#{axis},{angleText})"));
        Assert.Equal(1, solid.Volume / (Chords.Sector(1240, 90) * (1 - (1000.0 * 1000 / 1240 / 1240)) * 2500), 1e-6);
        Assert.Equal((0, 2500), (Math.Round(solid.Box.Min.Z, 6), Math.Round(solid.Box.Max.Z, 6)));
    }

    /// <summary>Wall of 240 x 1000 along 4000 and 3000 with a mitred corner: the centre line's length counts.</summary>
    [Fact]
    public void Along_a_curve_the_pieces_are_mitred()
    {
        var text = new ModelText();
        var line = text.Add($"IFCPOLYLINE((#{text.Point(0, 0, 0)},#{text.Point(4000, 0, 0)},#{text.Point(4000, 3000, 0)}))");
        // x of the profile points up: 1000 high from the curve, 240 wide about it.
        var profile = text.Add($"IFCRECTANGLEPROFILEDEF(.AREA.,$,#{text.Add($"IFCAXIS2PLACEMENT2D(#{text.Point(500, 0)},$)")},1000.,240.)");
        var onPlane = Read(text, text.Add($"IFCSURFACECURVESWEPTAREASOLID(#{profile},#{text.Axes(0, 0, 0)},#{line},0.,1.,#{text.Add($"IFCPLANE(#{text.Axes(0, 0, 0)})")})"));
        Assert.Equal(7000 * 240 * 1000.0, onPlane.Volume, 1e-2);
        Assert.Equal((4120, 3000, 1000), (Math.Round(onPlane.Box.Max.X, 6), Math.Round(onPlane.Box.Max.Y, 6), Math.Round(onPlane.Box.Max.Z, 6)));

        var again = new ModelText();
        var straight = again.Add($"IFCPOLYLINE((#{again.Point(0, 0, 0)},#{again.Point(4000, 0, 0)}))");
        var upright = again.Add("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,1000.,240.)");
        var fixedReference = Read(again, again.Add($"IFCFIXEDREFERENCESWEPTAREASOLID(#{upright},#{again.Axes(0, 0, 0)},#{straight},$,$,#{again.Direction(0, 0, 1)})"));
        Assert.Equal(new Vector3(4000, 240, 1000), new Vector3(Math.Round(fixedReference.Box.Size.X, 6), Math.Round(fixedReference.Box.Size.Y, 6), Math.Round(fixedReference.Box.Size.Z, 6)));
    }

    [Theory]
    [InlineData("IFCRECTANGULARPYRAMID(#{0},1000.,500.,600.)", 1000 * 500 * 600 / 3.0)]
    [InlineData("IFCBLOCK(#{0},1000.,500.,600.)", 1000 * 500 * 600.0)]
    public void Primitives_of_csg(string primitive, double volume)
    {
        var text = new ModelText();
        var item = text.Add(primitive.Replace("{0}", FormattableString.Invariant($"{text.Axes(0, 0, 0)}"), StringComparison.Ordinal));
        Assert.Equal(volume, Read(text, text.Add($"IFCCSGSOLID(#{item})")).Volume, 1e-2);
    }

    [Theory]
    [InlineData("IFCRIGHTCIRCULARCYLINDER(#{0},600.,500.)", 1.0)]
    [InlineData("IFCRIGHTCIRCULARCONE(#{0},600.,500.)", 1 / 3.0)]
    public void Round_primitives_of_csg(string primitive, double share)
    {
        var text = new ModelText();
        var item = text.Add(primitive.Replace("{0}", FormattableString.Invariant($"{text.Axes(0, 0, 0)}"), StringComparison.Ordinal));
        Assert.Equal(1, Read(text, text.Add($"IFCCSGSOLID(#{item})")).Volume / (Chords.Disc(500) * 600 * share), 1e-6);
    }

    private static Solid Read(ModelText text, int item)
    {
        var shape = text.Shape(item, "SweptSolid");
        using var model = text.Read();
        var body = new BodyReader(model.File, model.Units).Read(shape, Transform3.Identity);
        Assert.Empty(body.Unread);
        return body.Solid;
    }
}
